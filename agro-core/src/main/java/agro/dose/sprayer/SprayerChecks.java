package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.Quantity;
import java.util.Objects;

/** Refusals that several calculations share. */
final class SprayerChecks {

  private SprayerChecks() {}

  /** Lets an amount through that is above zero. */
  static <Q extends Quantity<Q>> Q aboveZero(Q amount, String what, String why, String cure) {
    Objects.requireNonNull(amount, what);
    if (!(amount.inBaseUnit() > 0)) {
      throw InputProblem.of("the " + what + " is " + amount)
          .expected("a " + what + " above zero")
          .because(why)
          .mend(cure);
    }
    return amount;
  }

  /** Lets a whole number through that is one or more. */
  static int oneOrMore(int number, String what, String why, String cure) {
    if (number < 1) {
      throw InputProblem.of("the number of " + what + " is " + number)
          .expected("at least 1")
          .because(why)
          .mend(cure);
    }
    return number;
  }

  /** Lets a confidence level through that lies between 0 and 1. */
  static double confidence(double level) {
    if (!(level > 0 && level < 1)) {
      throw InputProblem.of("the confidence level is " + Numbers.plain(level))
          .expected("a share between 0 and 1, such as 0.95")
          .because("an interval that holds with certainty has no end, one of 0 % has no width")
          .mend("write 95 % as 0.95");
    }
    return level;
  }

  /** The refusal of a name that is blank. */
  static String named(String name, String what) {
    Objects.requireNonNull(name, what);
    if (name.isBlank()) {
      throw InputProblem.of("the name of a " + what + " is blank")
          .expected("a name or a number painted on the " + what)
          .because("a finding without a name cannot be acted on")
          .mend("number them from left to right: \"1\", \"2\", \"3\"");
    }
    return name.strip();
  }
}
