package agro.stats.power;

import agro.report.InputProblem;

/** Numbers that a question about power may have. */
final class PowerChecks {

  private PowerChecks() {}

  static void chance(String what, double value) {
    if (!(value > 0 && value < 1)) {
      throw InputProblem.of("The " + what + " is " + value)
          .expected("a chance between 0 and 1, such as 0.05")
          .because("a test that errs never or always has no critical value")
          .mend("write 5 % as 0.05");
    }
  }

  static void positive(String what, double value) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw InputProblem.of("The " + what + " is " + value)
          .expected("a number above zero")
          .because("without scatter, or without a difference, there is nothing to plan")
          .mend("take it from earlier trials of the same kind");
    }
  }

  static void wantedPower(double wanted, double alpha) {
    if (!(wanted > alpha && wanted < 1)) {
      throw InputProblem.of("The wanted power is " + wanted)
          .expected("a chance above the level " + alpha + " and below 1, such as 0.8")
          .because("certainty would need infinitely many plots, and less than the level none")
          .mend("write 80 % as 0.8");
    }
  }
}
