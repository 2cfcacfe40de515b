package agro.dose.scaling;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.Quantity;
import java.util.Objects;

/** Refusals that several calculations share. */
final class ScalingChecks {

  private ScalingChecks() {}

  /** Lets an amount through that is above zero. */
  static <Q extends Quantity<Q>> Q aboveZero(Q amount, String what, String why, String cure) {
    Objects.requireNonNull(amount, what);
    if (!(amount.inBaseUnit() > 0)) {
      throw InputProblem.of("the " + what + " is " + amount)
          .expected("more than zero")
          .because(why)
          .mend(cure);
    }
    return amount;
  }

  /** Lets a finite number through that is above zero. */
  static double aboveZero(double number, String what, String why, String cure) {
    if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of("the " + what + " is " + Numbers.plain(number))
          .expected("a finite number above zero")
          .because(why)
          .mend(cure);
    }
    return number;
  }

  /** Lets a name through that has words. */
  static String named(String name, String what) {
    Objects.requireNonNull(name, what);
    if (name.isBlank()) {
      throw InputProblem.of("the name of a " + what + " is blank")
          .expected("a name, such as \"Product A\"")
          .because("an amount whose " + what + " is not known must not be measured out")
          .mend("write the name that stands on the container");
    }
    return name.strip();
  }

  /** Refuses a larger length where a smaller one has to fit into it. */
  static <Q extends Quantity<Q>> void notAbove(
      Q part, String partName, Q whole, String wholeName, String why, String cure) {
    if (part.inBaseUnit() > whole.inBaseUnit() * (1 + 1e-9)) {
      throw InputProblem.of(
              "the " + partName + " is " + part + " and the " + wholeName + " " + whole)
          .expected("a " + partName + " not above the " + wholeName)
          .because(why)
          .mend(cure);
    }
  }
}
