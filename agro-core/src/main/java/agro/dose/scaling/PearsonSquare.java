package agro.dose.scaling;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.Quantity;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;

/**
 * The Pearson square: how much of a strong and of a weak stock gives a strength between the two.
 * Parts of the strong one = wanted - weak; parts of the weak one = strong - wanted. Volumes are
 * taken to add up.
 *
 * @param strong the stronger stock
 * @param weak the weaker stock; zero for plain diluent
 * @param wanted strength from the weak to the strong one
 * @param total amount of the mixture, above zero
 * @param <C> kind of the strengths
 * @param <A> kind of the amounts, volume for strengths by volume, mass for strengths by mass
 */
public record PearsonSquare<C extends Quantity<C>, A extends Quantity<A>>(
    C strong, C weak, C wanted, A total) {

  /** Refuses strengths that are not in order. */
  public PearsonSquare {
    StrengthChecks.sameThing(strong, weak);
    StrengthChecks.sameThing(strong, wanted);
    StrengthChecks.amountFits(strong, total, "mixture");
    if (!(strong.inBaseUnit() > weak.inBaseUnit())) {
      throw InputProblem.of("the strong stock is " + strong + " and the weak one " + weak)
          .expected("a strong stock above the weak one")
          .because("two stocks of one strength give nothing but that strength, in any parts")
          .mend("name the stronger one first, and check the units of both");
    }
    boolean between =
        wanted.inBaseUnit() >= weak.inBaseUnit() && wanted.inBaseUnit() <= strong.inBaseUnit();
    if (!between) {
      throw InputProblem.of("the wanted strength is " + wanted)
          .expected("a strength from " + weak + " to " + strong)
          .because("a mixture is never stronger than its strong part nor weaker than its weak one")
          .mend("take another stock, or check the unit of the wanted strength");
    }
  }

  /**
   * Mixes, printed in metric units.
   *
   * @return parts, amounts and the steps
   */
  public PearsonMixture<C, A> evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Mixes.
   *
   * @param style units of print
   * @return parts, amounts and the steps
   */
  public PearsonMixture<C, A> evaluate(QuantityStyle style) {
    double strongParts = wanted.inBaseUnit() - weak.inBaseUnit();
    double weakParts = strong.inBaseUnit() - wanted.inBaseUnit();
    var strongAmount = total.times(strongParts / (strongParts + weakParts));
    var weakAmount = total.minus(strongAmount);
    var strongText = Numbers.plain(strongParts);
    var weakText = Numbers.plain(weakParts);
    var working =
        Working.of("Pearson square")
            .step(
                "parts of the strong stock",
                "wanted - weak",
                wanted + " - " + weak,
                strongText,
                ScalingSources.PEARSON)
            .step("parts of the weak stock", "strong - wanted", strong + " - " + wanted, weakText)
            .step(
                "amount of the strong stock",
                "total × parts / all parts",
                style.print(total)
                    + " × "
                    + strongText
                    + " / ("
                    + strongText
                    + " + "
                    + weakText
                    + ")",
                style.print(strongAmount))
            .step(
                "amount of the weak stock",
                "total - strong stock",
                style.print(total) + " - " + style.print(strongAmount),
                style.print(weakAmount))
            .withCautions(Caution.all());
    return new PearsonMixture<>(wanted, strongParts, weakParts, strongAmount, weakAmount, working);
  }
}
