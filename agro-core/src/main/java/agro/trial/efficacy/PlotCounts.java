package agro.trial.efficacy;

import agro.report.InputProblem;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Live pests on one plot, before and after the treatment, each as a total over the units that were
 * looked at.
 *
 * @param plot name of the plot
 * @param block its block; empty in a trial without blocks
 * @param treatment its treatment
 * @param before pests on all units before the treatment, if counted
 * @param after pests on all units after it
 * @param unitsBefore units looked at before, such as plants, above 0
 * @param unitsAfter units looked at after, above 0
 */
public record PlotCounts(
    String plot,
    String block,
    String treatment,
    OptionalDouble before,
    double after,
    double unitsBefore,
    double unitsAfter) {

  /**
   * Checks the numbers.
   *
   * @throws InputProblem when a count is below zero or not finite, or nothing was looked at
   */
  public PlotCounts {
    Objects.requireNonNull(plot, "plot");
    Objects.requireNonNull(block, "block");
    if (treatment.isBlank()) {
      throw InputProblem.of("plot \"" + plot + "\" without a treatment")
          .expected("the name of its treatment")
          .because("a plot is held against the control of its block")
          .mend("write the treatment from the plan of the trial");
    }
    before.ifPresent(value -> LiveCounts.check(value, "before in plot \"" + plot + "\""));
    LiveCounts.check(after, "after in plot \"" + plot + "\"");
    if (!(unitsBefore > 0 && unitsAfter > 0 && Double.isFinite(unitsBefore + unitsAfter))) {
      throw InputProblem.of(
              "plot \"" + plot + "\" with " + unitsBefore + " and " + unitsAfter + " units")
          .expected("numbers above 0")
          .because("the count is divided by what was looked at")
          .mend("give how many plants were looked at, or 1 for a plot as a whole");
    }
  }

  /**
   * A plot counted before and after, as many units each time.
   *
   * @param block its block
   * @param treatment its treatment
   * @param before pests before
   * @param after pests after
   * @return the plot, named after both
   */
  public static PlotCounts of(String block, String treatment, double before, double after) {
    return new PlotCounts(
        name(block, treatment), block, treatment, OptionalDouble.of(before), after, 1, 1);
  }

  /**
   * A plot counted after the treatment alone.
   *
   * @param block its block
   * @param treatment its treatment
   * @param after pests after
   * @return the plot, named after both
   */
  public static PlotCounts after(String block, String treatment, double after) {
    return new PlotCounts(
        name(block, treatment), block, treatment, OptionalDouble.empty(), after, 1, 1);
  }

  /**
   * This plot under another name.
   *
   * @param name name of the plot
   * @return a new record
   */
  public PlotCounts named(String name) {
    return new PlotCounts(name, block, treatment, before, after, unitsBefore, unitsAfter);
  }

  private static String name(String block, String treatment) {
    return (block + " " + treatment).trim();
  }
}
