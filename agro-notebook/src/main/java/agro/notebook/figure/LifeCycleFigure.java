package agro.notebook.figure;

import agro.development.cycle.LifeCycleRun;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A life cycle through a season: who is there on which day. */
public final class LifeCycleFigure {

  private LifeCycleFigure() {}

  /**
   * Draws how many are in each stage at the end of each day, a panel for each stage and a curve for
   * each generation.
   *
   * @param run the life cycle through the days
   * @return the figure
   */
  public static DrawnFigure of(LifeCycleRun run) {
    var sheet =
        new FigureSheet(
            heading(run),
            "Number in each stage at the end of the day, in units of the founders. Digits:"
                + " generations.",
            new LifeCyclePlot(run).numbers());
    return new DrawnFigure(
        sheet,
        alternative(run),
        "Life cycle at " + where(run) + ". " + note(run),
        data(run, "Number in each stage", false));
  }

  /**
   * Draws which share of the population is in each stage at the end of each day, as bands upon each
   * other. Days on which nobody is there are left empty.
   *
   * @param run the life cycle through the days
   * @return the figure
   */
  public static DrawnFigure shares(LifeCycleRun run) {
    var sheet =
        new FigureSheet(
            heading(run),
            "Height of a band: share of the population that is in the stage at the end of the day.",
            List.of(new LifeCyclePlot(run).shares()));
    return new DrawnFigure(
        sheet,
        alternative(run),
        "Shares of the stages at " + where(run) + ". " + note(run),
        data(run, "Share in each stage", true));
  }

  private static String heading(LifeCycleRun run) {
    return "Life cycle at "
        + run.temperatures().place()
        + ", "
        + FigureWords.longDay(run.temperatures().firstDay())
        + " to "
        + FigureWords.longDay(run.temperatures().lastDay());
  }

  private static String where(LifeCycleRun run) {
    return run.temperatures().place()
        + ", "
        + Numbers.fixed(run.completedGenerations(), 1)
        + " generations completed by "
        + FigureWords.longDay(run.temperatures().lastDay());
  }

  private static String note(LifeCycleRun run) {
    return run.cycle().stages().stream()
        .map(stage -> stage.name() + ": " + stage.clock().words())
        .collect(Collectors.joining("; ", "Clocks: ", ". Generation 1 is that of the founders."));
  }

  private static String alternative(LifeCycleRun run) {
    var text = new StringBuilder(400);
    text.append("Life cycle at ").append(where(run)).append('.');
    for (int g = 1; g <= run.generations(); g++) {
      for (var stage : run.cycle().stageNames()) {
        int generation = g;
        run.enteredBy(g, stage, 0.5)
            .ifPresent(
                day ->
                    text.append(" Half of generation ")
                        .append(generation)
                        .append(" is ")
                        .append(stage)
                        .append(" by ")
                        .append(FigureWords.day(day))
                        .append('.'));
      }
    }
    return text.toString();
  }

  private static ResultTable data(LifeCycleRun run, String title, boolean shares) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("End of"));
    run.cycle().stageNames().forEach(stage -> columns.add(Column.of(stage, shares ? "%" : "")));
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < run.temperatures().size(); i++) {
      rows.add(row(run, run.temperatures().day(i), shares));
    }
    return ResultTable.of(title, columns, rows);
  }

  private static List<Cell> row(LifeCycleRun run, LocalDate day, boolean shares) {
    var cells = new ArrayList<Cell>();
    cells.add(Cell.day(day));
    for (var stage : run.cycle().stageNames()) {
      double share = shares ? run.share(stage, day) : Double.NaN;
      if (shares) {
        cells.add(Double.isNaN(share) ? Cell.text("") : Cell.number(100 * share, 1));
      } else {
        cells.add(Cell.number(run.present(stage, day), 3));
      }
    }
    return cells;
  }
}
