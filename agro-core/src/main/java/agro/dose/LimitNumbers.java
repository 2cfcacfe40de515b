package agro.dose;

import agro.report.InputProblem;

/** Whole numbers that labels state. */
final class LimitNumbers {

  private LimitNumbers() {}

  static void require(long number, long least, String what) {
    if (number < least) {
      throw InputProblem.of(number + " " + what + " was given as a limit")
          .expected("a whole number of " + least + " or more")
          .because("a label that sets no such limit is recorded as saying none, not as a number")
          .mend("record the number of the label, or none() if the label says that there is none");
    }
  }
}
