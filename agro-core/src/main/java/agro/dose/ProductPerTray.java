package agro.dose;

import java.util.Objects;

/**
 * Product per tray of seedlings. What a plant gets depends on the cells of the tray.
 *
 * @param amount product above the line
 * @param number how many trays it is for, above zero
 */
public record ProductPerTray(ProductAmount amount, double number) implements ProductRate {

  /** Refuses nulls and numbers that are not above zero. */
  public ProductPerTray {
    Objects.requireNonNull(amount, "amount");
    RateReader.requireNumber(number);
  }

  /**
   * A rate as labels write it, for example {@code "2 g/tray"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerTray parse(String text) {
    return RateReader.only(text, ProductPerTray.class, RateKind.PRODUCT_PER_TRAY);
  }

  /**
   * The amount for one tray.
   *
   * @return low and high amount
   */
  public ProductAmount perTray() {
    return amount.times(1 / number);
  }

  /**
   * The amount for a number of trays.
   *
   * @param count how many, zero or more
   * @return low and high amount
   */
  public ProductAmount on(double count) {
    return amount.times(count / number);
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_TRAY;
  }

  @Override
  public String below() {
    return AmountPrint.counted(number, "tray", "trays");
  }

  @Override
  public ProductPerTray withAmount(ProductAmount other) {
    return new ProductPerTray(other, number);
  }

  @Override
  public ProductPerTray low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerTray high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
