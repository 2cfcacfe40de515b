package agro.notebook.figure;

import agro.development.Reached;
import agro.development.ThresholdSensitivity;
import agro.report.InputProblem;
import java.util.List;
import java.util.Optional;

/** How far the date of a requirement moves with the lower threshold. */
public final class ThresholdSensitivityFigure {

  private ThresholdSensitivityFigure() {}

  /**
   * Draws the dates for every lower threshold of the table, once with the requirement kept and once
   * with the requirement moved so that the development time at one temperature stays.
   *
   * @param table the table
   * @return the figure
   * @throws InputProblem when no threshold reaches the requirement
   */
  public static DrawnFigure of(ThresholdSensitivity table) {
    var plot = new ThresholdPlot(table);
    if (plot.isEmpty()) {
      throw InputProblem.of("a requirement of " + table.requirement())
          .expected("one that is reached above at least one of the thresholds")
          .because("there is no date to draw")
          .mend("give temperatures of more days, or a smaller requirement");
    }
    var chosen = table.chosen();
    var sheet =
        new FigureSheet(
            "The lower threshold decides the date: "
                + table.requirement()
                + " above "
                + chosen.lower()
                + ", "
                + day(chosen.alone()),
            FigureWords.sentence(table.model().toString()),
            List.of(plot.panel()));
    return new DrawnFigure(sheet, alternative(table), caption(table), table.table());
  }

  private static String alternative(ThresholdSensitivity table) {
    var text =
        new StringBuilder("Day on which ")
            .append(table.requirement())
            .append(" are reached by lower threshold. Chosen ")
            .append(table.chosen().lower())
            .append(": ")
            .append(day(table.chosen().alone()))
            .append('.');
    for (var line : ThresholdPlot.ends(table)) {
      text.append(" Above ")
          .append(line.lower())
          .append(": ")
          .append(day(line.alone()))
          .append(" with the requirement kept, ")
          .append(day(line.withRequirement()))
          .append(" with it moved.");
    }
    return text.toString();
  }

  private static String caption(ThresholdSensitivity table) {
    return "Solid: the lower threshold alone is another one. Dashed: the requirement moves with it,"
        + " so that development at "
        + table.measuredAt()
        + " takes the same time, as when another study of the same animal had been taken. Degree-days"
        + " by the "
        + table.model().method().words()
        + " ("
        + table.model().method().source().citation()
        + ").";
  }

  private static String day(Optional<Reached> reached) {
    return reached.map(when -> FigureWords.longDay(when.day())).orElse("not reached");
  }
}
