package agro.development.cycle;

import agro.report.InputProblem;

/** Refuses parameters and shares for which the distributions are not defined. */
final class DistributionInput {

  private DistributionInput() {}

  static void requirePositive(double value, String what) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw InputProblem.of("a " + what + " of " + value)
          .expected("a finite number above 0")
          .because("ages at completion cannot be spread by it")
          .mend("give the " + what + " that the source states");
    }
  }

  static void requireFinite(double value, String what) {
    if (!Double.isFinite(value)) {
      throw InputProblem.of("a " + what + " of " + value)
          .expected("a finite number")
          .because("ages at completion cannot be spread by it")
          .mend("give the " + what + " that the source states");
    }
  }

  static void requireShare(double share) {
    if (!(share > 0 && share < 1)) {
      throw InputProblem.of("the age at which a share of " + share + " has completed")
          .expected("a share above 0 and below 1")
          .because("the first and the last of a cohort have no certain age")
          .mend("ask for example for 0.05, 0.5 or 0.95");
    }
  }
}
