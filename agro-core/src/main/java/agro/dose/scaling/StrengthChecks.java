package agro.dose.scaling;

import agro.report.InputProblem;
import agro.units.Quantity;
import agro.units.QuantityKind;

/** What strengths and amounts of one mixture must have in common. */
final class StrengthChecks {

  private StrengthChecks() {}

  /** Refuses two counts of different things. */
  static void sameThing(Quantity<?> one, Quantity<?> other) {
    if (!one.baseUnit().equals(other.baseUnit())) {
      throw InputProblem.of("one strength is " + one + " and the other " + other)
          .expected("two strengths that count the same thing")
          .because("spores, colony-forming units and the rest are not one another")
          .mend("take both figures from tests that count the same thing");
    }
  }

  /** Refuses an amount that the strength is not per, and an amount of nothing. */
  static void amountFits(Quantity<?> strength, Quantity<?> amount, String what) {
    var kind = amount.baseUnit().kind();
    var below = strength.baseUnit().kind().denominator().orElse(null);
    if (kind != below || !(kind == QuantityKind.VOLUME || kind == QuantityKind.MASS)) {
      throw InputProblem.of("the " + what + " is " + amount + " and the strength " + strength)
          .expected("a volume for a strength by volume, or a mass for a strength by mass")
          .because("strength times amount is what is dissolved only if both have one basis")
          .mend("convert one of them with the density, which has to be stated");
    }
    if (!(amount.inBaseUnit() > 0)) {
      throw InputProblem.of("the amount of the " + what + " is " + amount)
          .expected("more than zero")
          .because("nothing can be shared out of nothing")
          .mend("state how much is to be made");
    }
  }
}
