package agro.dose;

import agro.units.Mass;
import java.util.Objects;

/**
 * Active ingredient per mass of seed.
 *
 * @param amount active ingredient above the line
 * @param per mass of seed
 */
public record ActivePerSeedMass(ActiveAmount amount, WrittenAmount<Mass> per)
    implements ActiveRate {

  /** Refuses nulls. */
  public ActivePerSeedMass {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
  }

  /**
   * A rate as labels write it, for example {@code "0.5 g ai/kg seed"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ActivePerSeedMass parse(String text) {
    return RateReader.only(text, ActivePerSeedMass.class, RateKind.ACTIVE_PER_SEED_MASS);
  }

  /**
   * The amount for a mass of seed.
   *
   * @param seed the mass
   * @return low and high amount
   */
  public ActiveAmount on(Mass seed) {
    return amount.times(seed.kilograms() / per.inBaseUnit());
  }

  /**
   * The rate of product that holds this active ingredient.
   *
   * @param strength strength of the product
   * @param state whether the product is measured or weighed
   * @return rate of product, written per the same amount
   */
  public ProductPerSeedMass product(ActiveStrength strength, ProductState state) {
    return new ProductPerSeedMass(strength.productFor(amount, state), per);
  }

  @Override
  public RateKind kind() {
    return RateKind.ACTIVE_PER_SEED_MASS;
  }

  @Override
  public String below() {
    return per + " seed";
  }

  @Override
  public ActivePerSeedMass withAmount(ActiveAmount other) {
    return new ActivePerSeedMass(other, per);
  }

  @Override
  public ActivePerSeedMass low() {
    return withAmount(amount.low());
  }

  @Override
  public ActivePerSeedMass high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
