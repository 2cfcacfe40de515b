package agro.course.sheet;

import agro.report.InputProblem;
import agro.sampling.sequential.SequentialPlan;
import agro.sampling.size.PrecisionStopLine;
import agro.units.Numbers;
import agro.working.Sheet;
import agro.working.TextLanguage;
import java.util.Objects;
import java.util.Optional;

/**
 * Paper for sequential sampling: units across, the running total upwards, and boxes for the counts.
 * Empty for lines that a student draws, or with the stop lines of a plan.
 *
 * @param title heading; the name of the paper when empty
 * @param unit what one unit is; room to write it when empty
 * @param mostUnits units on the axis across, 5 to 500
 * @param highestTotal total at the upper edge, 1 or more
 * @param plan the plan whose lines are drawn, possibly none
 * @param precision the line of a stated precision that is drawn, possibly none
 */
public record StopLinePaper(
    String title,
    String unit,
    int mostUnits,
    double highestTotal,
    Optional<SequentialPlan> plan,
    Optional<PrecisionStopLine> precision)
    implements PrintableSheet {

  private static final int LEAST_UNITS = 5;
  private static final int MOST_UNITS = 500;
  private static final double MARGIN = 1.08;
  private static final double LEFT = 26;
  private static final double RIGHT = 194;
  private static final double TOP = 40;
  private static final double BOTTOM = 160;

  /**
   * Checks the axes.
   *
   * @throws InputProblem when an axis is out of range, or there are two kinds of lines
   */
  public StopLinePaper {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(unit, "unit");
    if (mostUnits < LEAST_UNITS || mostUnits > MOST_UNITS) {
      throw InputProblem.of("paper for " + mostUnits + " units")
          .expected("5 to 500")
          .because("the page has room for so many")
          .mend("end the plan earlier, for example with SequentialPlan.truncated");
    }
    if (!(highestTotal >= 1 && highestTotal <= 1e6)) {
      throw InputProblem.of("paper up to a total of " + highestTotal)
          .expected("a total from 1 to 1000000")
          .because("the running total needs an axis")
          .mend("take the total at which the upper line ends");
    }
    if (plan.isPresent() && precision.isPresent()) {
      throw InputProblem.of("a plan and a line of precision on one paper")
          .expected("one of the two")
          .because("a reader would not know which line to stop at")
          .mend("print two papers");
    }
    if (plan.isPresent() && plan.get().mostUnits().orElse(mostUnits) > mostUnits) {
      throw InputProblem.of(mostUnits + " units of paper for a plan of more")
          .expected("at least " + plan.get().mostUnits().getAsInt() + " units")
          .because("the end of the plan would lie off the paper")
          .mend("give the paper as many units as the plan");
    }
    if (precision.isPresent() && !(precision.get().limit() < mostUnits)) {
      throw InputProblem.of(mostUnits + " units of paper for a line that begins later")
          .expected("more than " + Numbers.fixed(precision.get().limit(), 1) + " units")
          .because("with fewer units the precision is out of reach")
          .mend("take more units or a larger error");
    }
  }

  /**
   * Empty paper.
   *
   * @param mostUnits units across, 5 to 500
   * @param highestTotal total at the upper edge, 1 or more
   * @return the paper
   * @throws InputProblem when an axis is out of range
   */
  public static StopLinePaper of(int mostUnits, double highestTotal) {
    return new StopLinePaper("", "", mostUnits, highestTotal, Optional.empty(), Optional.empty());
  }

  /**
   * Paper with the lines of a plan that ends.
   *
   * @param plan the plan
   * @return the paper, as wide as the plan and as high as its upper line
   * @throws InputProblem when the plan has no end or ends outside 5 to 500 units
   */
  public static StopLinePaper of(SequentialPlan plan) {
    if (plan.mostUnits().isEmpty()) {
      throw InputProblem.of("paper for a plan without an end")
          .expected("a greatest number of units")
          .because("a page ends somewhere")
          .mend("end the plan with SequentialPlan.truncated, or state the units of the paper");
    }
    return of(plan, Math.max(LEAST_UNITS, plan.mostUnits().getAsInt()));
  }

  /**
   * Paper with the lines of a plan, which need not end.
   *
   * @param plan the plan
   * @param mostUnits units across, 5 to 500
   * @return the paper, as high as the upper line
   * @throws InputProblem when the units are out of range
   */
  public static StopLinePaper of(SequentialPlan plan, int mostUnits) {
    double highest = Math.max(5, MARGIN * plan.bounds().high(Math.max(1, mostUnits)));
    return new StopLinePaper("", "", mostUnits, highest, Optional.of(plan), Optional.empty());
  }

  /**
   * Paper with the line of a stated precision.
   *
   * @param line the line
   * @param mostUnits units across, 5 to 500
   * @return the paper, high enough for the line at most of its units
   * @throws InputProblem when the units are out of range or the line begins later
   */
  public static StopLinePaper of(PrecisionStopLine line, int mostUnits) {
    int first = Math.max(1, (int) Math.floor(Math.max(line.limit(), 0.15 * mostUnits)) + 1);
    double highest = first > mostUnits ? 5 : Math.max(line.stopAt(first), line.stopAt(mostUnits));
    return new StopLinePaper(
        "", "", mostUnits, Math.max(5, MARGIN * highest), Optional.empty(), Optional.of(line));
  }

  /**
   * The same paper with a heading.
   *
   * @param heading heading
   * @param oneUnit what one unit is, for example a plant
   * @return new paper
   */
  public StopLinePaper titled(String heading, String oneUnit) {
    return new StopLinePaper(heading, oneUnit, mostUnits, highestTotal, plan, precision);
  }

  /**
   * The same axes without lines, for the question that belongs to a solution.
   *
   * @return empty paper
   */
  public StopLinePaper empty() {
    return new StopLinePaper(
        title, unit, mostUnits, highestTotal, Optional.empty(), Optional.empty());
  }

  /**
   * Where a number of units stands.
   *
   * @param units 0 or more
   * @return millimetres from the left edge of the paper
   */
  public double across(double units) {
    return LEFT + (RIGHT - LEFT) * units / mostUnits;
  }

  /**
   * Where a total stands.
   *
   * @param total 0 or more
   * @return millimetres from the upper edge of the paper
   */
  public double down(double total) {
    return BOTTOM - (BOTTOM - TOP) * total / highestTotal;
  }

  @Override
  public Sheet sheet(TextLanguage language) {
    return new StopLinePaperDrawing(this, language).draw();
  }
}
