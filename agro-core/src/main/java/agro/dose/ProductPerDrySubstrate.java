package agro.dose;

import agro.units.Mass;
import java.util.Objects;

/**
 * Product per mass of the dry matter of manure, compost or soil.
 *
 * @param amount product above the line
 * @param per dry mass
 * @param substrate what is treated
 */
public record ProductPerDrySubstrate(
    ProductAmount amount, WrittenAmount<Mass> per, Substrate substrate) implements ProductRate {

  /** Refuses nulls. */
  public ProductPerDrySubstrate {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
    Objects.requireNonNull(substrate, "substrate");
  }

  /**
   * A rate as labels write it, for example {@code "2 kg/t manure (dry)"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerDrySubstrate parse(String text) {
    return RateReader.only(text, ProductPerDrySubstrate.class, RateKind.PRODUCT_PER_DRY_SUBSTRATE);
  }

  /**
   * The amount for a mass, weighed as dry matter.
   *
   * @param dryMass the mass
   * @return low and high amount
   */
  public ProductAmount in(Mass dryMass) {
    return amount.times(dryMass.kilograms() / per.inBaseUnit());
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_DRY_SUBSTRATE;
  }

  @Override
  public String below() {
    return per + " " + substrate.words() + " (dry)";
  }

  @Override
  public ProductPerDrySubstrate withAmount(ProductAmount other) {
    return new ProductPerDrySubstrate(other, per, substrate);
  }

  @Override
  public ProductPerDrySubstrate low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerDrySubstrate high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
