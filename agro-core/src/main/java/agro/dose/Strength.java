package agro.dose;

import agro.report.InputProblem;
import agro.units.Density;
import java.util.Optional;

/**
 * How much a product holds: active ingredient by volume or by mass, or living units by volume or by
 * mass. A density is used where it is stated and never guessed.
 */
public sealed interface Strength permits ActiveStrength, LivingStrength {

  /**
   * Reads a strength as labels write it: "200 g/L", "25 % w/w", "750 g/kg", "4 lb/gal (US)", "360 g
   * ae/L", "2 x 10^9 CFU/g".
   *
   * @param text the strength
   * @return the strength without a density
   * @throws agro.units.UnreadableQuantity if the text is not clear, a bare per cent among others
   * @throws InputProblem if it is no strength
   */
  static Strength parse(String text) {
    return StrengthReader.read(text);
  }

  /**
   * The density of the product, where it is stated.
   *
   * @return the density, or nothing
   */
  Optional<Density> density();

  /**
   * The same strength with the density of the product stated.
   *
   * @param density density of the product
   * @return the strength
   */
  Strength withDensity(Density density);
}
