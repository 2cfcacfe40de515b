package agro.dose;

import java.util.Objects;

/**
 * Product per spot that is treated, for example a nest, a stump or a patch.
 *
 * @param amount product above the line
 * @param number how many spots it is for, above zero
 */
public record ProductPerSpot(ProductAmount amount, double number) implements ProductRate {

  /** Refuses nulls and numbers that are not above zero. */
  public ProductPerSpot {
    Objects.requireNonNull(amount, "amount");
    RateReader.requireNumber(number);
  }

  /**
   * A rate as labels write it, for example {@code "10 mL/spot"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerSpot parse(String text) {
    return RateReader.only(text, ProductPerSpot.class, RateKind.PRODUCT_PER_SPOT);
  }

  /**
   * The amount for one spot.
   *
   * @return low and high amount
   */
  public ProductAmount perSpot() {
    return amount.times(1 / number);
  }

  /**
   * The amount for a number of spots.
   *
   * @param count how many, zero or more
   * @return low and high amount
   */
  public ProductAmount on(double count) {
    return amount.times(count / number);
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_SPOT;
  }

  @Override
  public String below() {
    return AmountPrint.counted(number, "spot", "spots");
  }

  @Override
  public ProductPerSpot withAmount(ProductAmount other) {
    return new ProductPerSpot(other, number);
  }

  @Override
  public ProductPerSpot low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerSpot high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
