package agro.dose;

import agro.units.Mass;
import java.util.Objects;

/**
 * Product per mass of manure, compost or soil as it lies, its water included.
 *
 * @param amount product above the line
 * @param per wet mass
 * @param substrate what is treated
 */
public record ProductPerWetSubstrate(
    ProductAmount amount, WrittenAmount<Mass> per, Substrate substrate) implements ProductRate {

  /** Refuses nulls. */
  public ProductPerWetSubstrate {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
    Objects.requireNonNull(substrate, "substrate");
  }

  /**
   * A rate as labels write it, for example {@code "2 kg/t manure (wet)"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerWetSubstrate parse(String text) {
    return RateReader.only(text, ProductPerWetSubstrate.class, RateKind.PRODUCT_PER_WET_SUBSTRATE);
  }

  /**
   * The amount for a mass, weighed with its water.
   *
   * @param wetMass the mass
   * @return low and high amount
   */
  public ProductAmount in(Mass wetMass) {
    return amount.times(wetMass.kilograms() / per.inBaseUnit());
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_WET_SUBSTRATE;
  }

  @Override
  public String below() {
    return per + " " + substrate.words() + " (wet)";
  }

  @Override
  public ProductPerWetSubstrate withAmount(ProductAmount other) {
    return new ProductPerWetSubstrate(other, per, substrate);
  }

  @Override
  public ProductPerWetSubstrate low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerWetSubstrate high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
