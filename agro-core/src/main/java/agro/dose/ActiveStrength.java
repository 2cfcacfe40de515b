package agro.dose;

import agro.report.InputProblem;
import agro.units.Density;

/** The strength of a product in active ingredient, by volume or by mass of product. */
public sealed interface ActiveStrength extends Strength permits ContentByVolume, ContentByMass {

  /**
   * Reads a strength in active ingredient, for example {@code "200 g/L"} or {@code "25 % w/w"}.
   *
   * @param text the strength
   * @return the strength without a density
   * @throws agro.units.UnreadableQuantity if the text is not clear
   * @throws InputProblem if it is a strength in living units
   */
  static ActiveStrength parse(String text) {
    if (StrengthReader.read(text) instanceof ActiveStrength active) {
      return active;
    }
    throw InputProblem.of("\"" + text + "\" is a strength in living units")
        .expected("active ingredient by mass or volume, such as 200 g/L")
        .because("living units have no mass of active ingredient")
        .mend("read it with LivingStrength.parse");
  }

  /**
   * What is stated: active ingredient, acid equivalent or salt.
   *
   * @return the basis
   */
  ActiveBasis basis();

  /**
   * The active ingredient in an amount of product.
   *
   * @param product the product
   * @return the active ingredient, low and high
   * @throws InputProblem if a density is missing, or living units are given
   */
  ActiveAmount activeIn(ProductAmount product);

  /**
   * The product that holds an amount of active ingredient.
   *
   * @param active the active ingredient
   * @param state whether the product is measured or weighed
   * @return the product, low and high
   * @throws InputProblem if a density is missing or the basis differs
   */
  ProductAmount productFor(ActiveAmount active, ProductState state);

  @Override
  ActiveStrength withDensity(Density density);
}
