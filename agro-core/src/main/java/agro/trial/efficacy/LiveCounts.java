package agro.trial.efficacy;

import agro.report.InputProblem;
import java.util.OptionalDouble;

/**
 * Live pests on treated and on control plots, as numbers or as means for each unit.
 *
 * @param treatedBefore on the treated before the treatment, if counted
 * @param treatedAfter on the treated after the treatment
 * @param controlBefore on the control before the treatment, if counted
 * @param controlAfter on the control after the treatment
 */
public record LiveCounts(
    OptionalDouble treatedBefore,
    double treatedAfter,
    OptionalDouble controlBefore,
    double controlAfter) {

  /**
   * Checks the numbers.
   *
   * @throws InputProblem when one is below zero or not finite, or only one before-count is there
   */
  public LiveCounts {
    treatedBefore.ifPresent(value -> check(value, "before on the treated"));
    controlBefore.ifPresent(value -> check(value, "before on the control"));
    check(treatedAfter, "after on the treated");
    check(controlAfter, "after on the control");
    if (treatedBefore.isPresent() != controlBefore.isPresent()) {
      throw InputProblem.of("a count before the treatment on one of treated and control only")
          .expected("both or none")
          .because("the change of the one is held against the change of the other")
          .mend("give both, or leave both out and take Abbott's formula");
    }
  }

  /**
   * Counts after the treatment alone.
   *
   * @param treatedAfter on the treated
   * @param controlAfter on the control
   * @return the counts
   */
  public static LiveCounts after(double treatedAfter, double controlAfter) {
    return new LiveCounts(
        OptionalDouble.empty(), treatedAfter, OptionalDouble.empty(), controlAfter);
  }

  /**
   * Counts before and after the treatment.
   *
   * @param treatedBefore on the treated before
   * @param treatedAfter on the treated after
   * @param controlBefore on the control before
   * @param controlAfter on the control after
   * @return the counts
   */
  public static LiveCounts of(
      double treatedBefore, double treatedAfter, double controlBefore, double controlAfter) {
    return new LiveCounts(
        OptionalDouble.of(treatedBefore),
        treatedAfter,
        OptionalDouble.of(controlBefore),
        controlAfter);
  }

  /**
   * Whether counts before the treatment are there.
   *
   * @return true for both
   */
  public boolean hasBefore() {
    return treatedBefore.isPresent();
  }

  static double check(double count, String which) {
    if (!(count >= 0 && Double.isFinite(count))) {
      throw InputProblem.of("a count " + which + " of " + count)
          .expected("a finite number of 0 or more")
          .because("pests that are there are counted, and a missing count is not a number")
          .mend("look the count up in the field book, or leave the plot out");
    }
    return count;
  }
}
