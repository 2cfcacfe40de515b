package agro.dose;

import java.util.Objects;

/**
 * Product per number of seeds.
 *
 * @param amount product above the line
 * @param number how many seeds it is for, above zero
 */
public record ProductPerSeedCount(ProductAmount amount, double number) implements ProductRate {

  /** Refuses nulls and numbers that are not above zero. */
  public ProductPerSeedCount {
    Objects.requireNonNull(amount, "amount");
    RateReader.requireNumber(number);
  }

  /**
   * A rate as labels write it, for example {@code "80 mL/100000 seeds"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerSeedCount parse(String text) {
    return RateReader.only(text, ProductPerSeedCount.class, RateKind.PRODUCT_PER_SEED_COUNT);
  }

  /**
   * The amount for one seed.
   *
   * @return low and high amount
   */
  public ProductAmount perSeed() {
    return amount.times(1 / number);
  }

  /**
   * The amount for a number of seeds.
   *
   * @param count how many, zero or more
   * @return low and high amount
   */
  public ProductAmount on(double count) {
    return amount.times(count / number);
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_SEED_COUNT;
  }

  @Override
  public String below() {
    return AmountPrint.counted(number, "seed", "seeds");
  }

  @Override
  public ProductPerSeedCount withAmount(ProductAmount other) {
    return new ProductPerSeedCount(other, number);
  }

  @Override
  public ProductPerSeedCount low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerSeedCount high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
