package agro.notebook.figure;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.sampling.field.PlanWalk;
import agro.sampling.sequential.FieldClass;
import agro.sampling.sequential.SequentialPlan;
import agro.sampling.size.PrecisionStopLine;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/** Stop lines by the number of units looked at, and walks on them. */
public final class StopLineFigure {

  private StopLineFigure() {}

  /**
   * Draws the stop lines of a plan.
   *
   * @param plan the plan, which must have an end
   * @return the figure
   * @throws InputProblem when the plan has no end
   */
  public static DrawnFigure of(SequentialPlan plan) {
    return draw(plan, List.of(), "Units looked at", "", "animals");
  }

  /**
   * Draws a walk on the stop lines of its plan.
   *
   * @param walk the walk, at any place on its way
   * @return the figure
   * @throws InputProblem when the plan has no end
   */
  public static DrawnFigure of(PlanWalk walk) {
    var totals = new ArrayList<Long>();
    long total = 0;
    for (int count : walk.counts()) {
      total += worth(walk, count);
      totals.add(total);
    }
    var things = walk.tally().isPresent() ? "marked units" : "animals";
    return draw(
        walk.plan(),
        totals,
        "Units looked at (one unit: " + walk.unit().words() + ")",
        walk.next() + " " + walk.reason(),
        things);
  }

  private static int worth(PlanWalk walk, int count) {
    if (walk.tally().isEmpty()) {
      return count;
    }
    return count > walk.tally().getAsInt() ? 1 : 0;
  }

  private static DrawnFigure draw(
      SequentialPlan plan, List<Long> totals, String xTitle, String standing, String things) {
    if (plan.mostUnits().isEmpty()) {
      throw InputProblem.of("a figure of a plan without an end")
          .expected("a greatest number of units")
          .because("the lines go on for ever, and the page does not")
          .mend("end the plan with SequentialPlan.truncated");
    }
    var plot = new PlanLinePlot(plan, totals, things);
    var sheet =
        new FigureSheet(
            totals.isEmpty() ? "When to stop" : "On the way through the field",
            "Go on while the total lies in the white strip; stop when it comes to a grey side.",
            List.of(plot.panel(xTitle)));
    return new DrawnFigure(
        sheet, alternative(plan, standing, things), caption(plan), data(plan, totals, things));
  }

  private static String alternative(SequentialPlan plan, String standing, String things) {
    int most = plan.mostUnits().orElseThrow();
    int half = Math.max(plan.leastUnits(), most / 2);
    return "Two stop lines by the number of units looked at. At "
        + half
        + " units: low at "
        + Math.max(0, plan.lastLow(half))
        + " "
        + things
        + " or fewer, high at "
        + plan.firstHigh(half)
        + " or more. The plan ends at "
        + most
        + " units."
        + (standing.isEmpty() ? "" : " The walk: " + standing);
  }

  private static String caption(SequentialPlan plan) {
    return FigureWords.sentence(plan.bounds().words())
        + ". At least "
        + plan.leastUnits()
        + " and at most "
        + plan.mostUnits().orElseThrow()
        + " units. A total on a line stops the walk.";
  }

  private static ResultTable data(SequentialPlan plan, List<Long> totals, String things) {
    var rows = new ArrayList<List<Cell>>();
    for (int n = 1; n <= plan.mostUnits().orElseThrow(); n++) {
      rows.add(
          List.of(
              Cell.number(n, 0),
              plan.lastLow(n) < 0 ? Cell.text("–") : Cell.number((double) plan.lastLow(n), 0),
              plan.firstHigh(n) == Long.MAX_VALUE
                  ? Cell.text("–")
                  : Cell.number((double) plan.firstHigh(n), 0),
              n <= totals.size() ? Cell.number((double) totals.get(n - 1), 0) : Cell.text("")));
    }
    return ResultTable.of(
        "Stop lines",
        List.of(
            Column.of("Units"),
            Column.of("Low at or below", things),
            Column.of("High at or above", things),
            Column.of("Total of the walk", things)),
        rows);
  }

  /**
   * Draws the line at which the mean is known well enough, and a walk up to it.
   *
   * @param line the line
   * @param counts counts in the order in which they were made
   * @return the figure
   * @throws InputProblem when there are no more counts than the line needs to begin
   */
  public static DrawnFigure of(PrecisionStopLine line, CountSample counts) {
    int least = (int) Math.floor(line.limit()) + 1;
    if (counts.size() <= least) {
      throw InputProblem.of(counts.size() + " counts")
          .expected("more than " + least)
          .because("the line begins there, and nothing of it would be seen")
          .mend("take a larger sample, or be content with a larger error");
    }
    var plot = new PrecisionLinePlot(line, counts);
    var sheet =
        new FigureSheet(
            "Counting until the mean is known well enough",
            "Stop where the total comes into the grey: from there the standard error is "
                + Numbers.plain(100 * line.relativeError())
                + " % of the mean or less.",
            List.of(plot.panel()));
    return new DrawnFigure(sheet, plot.alternative(), plot.caption(), plot.data());
  }

  /** How a stop is named in the figures. */
  static String stopWords(FieldClass says, int units) {
    return switch (says) {
      case GO_ON -> "go on after " + units;
      case UNDECIDED -> "undecided after " + units;
      case LOW -> "low after " + units;
      case HIGH -> "high after " + units;
    };
  }
}
