package agro.notebook.figure;

import agro.notebook.figure.DoseMistake.Spread;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.Comparator;
import java.util.List;

/**
 * Mistakes in dose arithmetic by their size: a line for each, the worst on top, on a scale where
 * twice too much and half too little are equally far from what was meant.
 */
public final class DoseMistakeFigure {

  private DoseMistakeFigure() {}

  /**
   * Draws mistakes by their size.
   *
   * @param mistakes the mistakes in any order, at least one
   * @return the figure
   * @throws InputProblem if there is none
   */
  public static DrawnFigure of(List<DoseMistake> mistakes) {
    if (mistakes.isEmpty()) {
      throw InputProblem.of("no mistake to draw")
          .expected("at least one mistake with its size")
          .because("the scale of the figure follows the sizes")
          .mend("add mistakes to the list before it is drawn");
    }
    var sorted =
        mistakes.stream()
            .sorted(Comparator.comparingDouble(DoseMistake::worst).reversed())
            .toList();
    var sheet =
        new FigureSheet(
            "How far common mistakes put a dose wrong",
            "Hollow: too little. Filled: too much. A bar: any size between its ends.",
            List.of(new DoseMistakePlot(sorted).panel()));
    return new DrawnFigure(sheet, alternative(sorted), caption(), data(sorted));
  }

  /** A multiple as a reader says it: in per cent near one, else as times or parts. */
  static String size(double multiple) {
    if (multiple == 1) {
      return "as meant";
    }
    if (multiple > 0.6 && multiple < 1.6) {
      var percent = 100 * Math.abs(multiple - 1);
      return (multiple > 1 ? "+" : "\u2212")
          + (percent < 10 ? Numbers.significant(percent, 2) : Numbers.fixed(percent, 0))
          + "\u00a0%";
    }
    return multiple > 1
        ? "\u00d7\u00a0" + Numbers.significant(multiple, 3)
        : "\u00f7\u00a0" + Numbers.significant(1 / multiple, 3);
  }

  static String sizes(DoseMistake mistake) {
    return switch (mistake.spread()) {
      case ONE_SIZE -> size(mistake.most());
      case EITHER_WAY -> size(mistake.least()) + " or " + size(mistake.most());
      case ANYWHERE_BETWEEN -> size(mistake.least()) + " to " + size(mistake.most());
    };
  }

  private static String alternative(List<DoseMistake> sorted) {
    var text = new StringBuilder(200);
    text.append("Dose got as a multiple of the dose meant, for ")
        .append(sorted.size())
        .append(sorted.size() == 1 ? " mistake" : " mistakes, the worst first");
    var separator = ": ";
    for (var mistake : sorted) {
      text.append(separator).append(mistake.name()).append(' ').append(sizes(mistake));
      separator = "; ";
    }
    return text.append('.').toString();
  }

  private static String caption() {
    return "Dose that comes of the mistake over the dose that was meant, on a logarithmic scale:"
        + " \u00f7\u00a02 is half of what was meant, \u00d7\u00a02 twice as much.";
  }

  private static ResultTable data(List<DoseMistake> sorted) {
    return ResultTable.of(
        "Common mistakes and their size",
        List.of(
            Column.of("Mistake"),
            Column.of("Size"),
            Column.of("Least", "times"),
            Column.of("Most", "times"),
            Column.of("What stops it")),
        sorted.stream().map(DoseMistakeFigure::row).toList());
  }

  private static List<Cell> row(DoseMistake mistake) {
    return List.of(
        Cell.text(mistake.name()),
        Cell.text(sizes(mistake)),
        Cell.number(mistake.least(), 3),
        mistake.spread() == Spread.ONE_SIZE
            ? Cell.number(mistake.least(), 3)
            : Cell.number(mistake.most(), 3),
        Cell.text(mistake.stoppedBy()));
  }
}
