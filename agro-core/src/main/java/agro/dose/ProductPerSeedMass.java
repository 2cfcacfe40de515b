package agro.dose;

import agro.units.Mass;
import java.util.Objects;

/**
 * Product per mass of seed.
 *
 * @param amount product above the line
 * @param per mass of seed
 */
public record ProductPerSeedMass(ProductAmount amount, WrittenAmount<Mass> per)
    implements ProductRate {

  /** Refuses nulls. */
  public ProductPerSeedMass {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
  }

  /**
   * A rate as labels write it, for example {@code "4 g/kg seed"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerSeedMass parse(String text) {
    return RateReader.only(text, ProductPerSeedMass.class, RateKind.PRODUCT_PER_SEED_MASS);
  }

  /**
   * The amount for a mass of seed.
   *
   * @param seed the mass
   * @return low and high amount
   */
  public ProductAmount on(Mass seed) {
    return amount.times(seed.kilograms() / per.inBaseUnit());
  }

  /**
   * The active ingredient in this rate of product.
   *
   * @param strength strength of the product
   * @return rate of active ingredient, written per the same amount
   * @throws agro.report.InputProblem if a density is missing
   */
  public ActivePerSeedMass active(ActiveStrength strength) {
    return new ActivePerSeedMass(strength.activeIn(amount), per);
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_SEED_MASS;
  }

  @Override
  public String below() {
    return per + " seed";
  }

  @Override
  public ProductPerSeedMass withAmount(ProductAmount other) {
    return new ProductPerSeedMass(other, per);
  }

  @Override
  public ProductPerSeedMass low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerSeedMass high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
