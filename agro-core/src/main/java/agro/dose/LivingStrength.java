package agro.dose;

import agro.report.InputProblem;
import agro.units.Density;

/** The strength of a product that is counted in living units; it never becomes a mass. */
public sealed interface LivingStrength extends Strength permits LivingByVolume, LivingByMass {

  /**
   * Reads a strength in living units, for example {@code "2 x 10^9 CFU/g"}.
   *
   * @param text the strength
   * @return the strength
   * @throws agro.units.UnreadableQuantity if the text is not clear
   * @throws InputProblem if it is a strength in active ingredient
   */
  static LivingStrength parse(String text) {
    if (StrengthReader.read(text) instanceof LivingStrength living) {
      return living;
    }
    throw InputProblem.of("\"" + text + "\" is a strength in active ingredient")
        .expected("living units by mass or volume, such as 2 x 10^9 CFU/g")
        .because("a mass of active ingredient is never a number of living units")
        .mend("read it with Strength.parse, or write the count that the label states");
  }

  /**
   * What is alive of the units that the label states: label times tested viability.
   *
   * @param viability share found alive in a test
   * @return the strength in units that live
   */
  LivingStrength alive(Viability viability);

  /**
   * The living units in an amount of product.
   *
   * @param product the product
   * @return the count, low and high
   * @throws InputProblem if a density is missing
   */
  ProductAmount.Living livingIn(ProductAmount product);

  /**
   * The product that holds a number of living units.
   *
   * @param living the count
   * @param state whether the product is measured or weighed
   * @return the product, low and high
   * @throws InputProblem if a density is missing or other things are counted
   */
  ProductAmount productForLiving(ProductAmount.Living living, ProductState state);

  @Override
  LivingStrength withDensity(Density density);
}
