package agro.dose;

import agro.report.InputProblem;
import java.util.Objects;
import java.util.Optional;

/**
 * A formulated product as far as arithmetic needs it. Examples are called "Product A".
 *
 * @param name what it is called here
 * @param formulation type of formulation
 * @param strength what it holds
 */
public record Product(String name, Formulation formulation, Strength strength) {

  /** Refuses a product without a name. */
  public Product {
    Objects.requireNonNull(formulation, "formulation");
    Objects.requireNonNull(strength, "strength");
    if (name.isBlank()) {
      throw InputProblem.of("a product without a name")
          .expected("what the product is called on the page")
          .because("several products may stand in one tank")
          .mend("give it the name that the reader of the page knows");
    }
  }

  /**
   * A product from the code and the strength of its label.
   *
   * @param name what it is called here
   * @param code code of the formulation, for example {@code "EC"}
   * @param strength strength, for example {@code "200 g/L"}
   * @return the product
   * @throws agro.units.UnreadableQuantity if the strength is not clear
   * @throws InputProblem if the code is not known or the text is no strength
   */
  public static Product of(String name, String code, String strength) {
    return new Product(name, Formulation.of(code), Strength.parse(strength));
  }

  /**
   * How the product is measured out, as its formulation says.
   *
   * @return liquid or solid
   * @throws InputProblem if the formulation is neither
   */
  public ProductState state() {
    Optional<ProductState> state = formulation.state();
    return state.orElseThrow(
        () ->
            InputProblem.of(name + " is a formulation of type " + formulation)
                .expected("a product that is poured or weighed")
                .because("the code does not say whether it is measured as a volume or weighed")
                .mend("give the state with the amount that is asked for"));
  }

  /**
   * Refuses a rate that this product is not measured for: a powder by volume, or a liquid by
   * weight, without a density. A level spoon of powder holds from a third of its volume in grams to
   * nearly all of it.
   *
   * @param rate rate of product
   * @param <R> kind of rate
   * @return the rate, unchanged
   * @throws InputProblem if rate and formulation do not fit each other
   */
  public <R extends ProductRate> R measuring(R rate) {
    boolean liquid = rate.amount() instanceof ProductAmount.Liquid;
    boolean solid = rate.amount() instanceof ProductAmount.Solid;
    var state = formulation.state();
    boolean fits =
        state.isEmpty()
            || strength.density().isPresent()
            || (!liquid && !solid)
            || liquid == (state.get() == ProductState.LIQUID);
    if (!fits) {
      throw InputProblem.of(rate + " is stated of " + name + ", a " + formulation.name())
          .expected("a rate of " + state.get().words())
          .because(
              liquid
                  ? "a millilitre of powder weighs 0.32 to 0.96 g, so that grams measured as"
                      + " millilitres are up to 68 % too little"
                  : "a gram of liquid is no millilitre unless its density is 1, and a dry ounce is"
                      + " no fluid ounce")
          .mend("look at the unit on the label, or state the density with the strength");
    }
    return rate;
  }

  /**
   * The product that holds a rate of active ingredient.
   *
   * @param rate active ingredient per area
   * @return the steps and the rate of product
   * @throws InputProblem if the strength is in living units, the basis differs or a density is
   *     missing
   */
  public StrengthConversion productFor(ActivePerArea rate) {
    return new StrengthConversion(rate, activeStrength(), state());
  }

  private ActiveStrength activeStrength() {
    if (strength instanceof ActiveStrength active) {
      return active;
    }
    throw InputProblem.of(name + " is counted in living units, " + strength)
        .expected("a strength as active ingredient")
        .because("living units have no mass of active ingredient")
        .mend("state the dose as living units per area");
  }

  @Override
  public String toString() {
    return name + " (" + formulation.code() + ", " + strength + ")";
  }
}
