package agro.dose;

import agro.units.Length;
import java.util.Objects;

/**
 * Product per length of crop row.
 *
 * @param amount product above the line
 * @param per length of row
 */
public record ProductPerRowLength(ProductAmount amount, WrittenAmount<Length> per)
    implements ProductRate {

  /** Refuses nulls. */
  public ProductPerRowLength {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
  }

  /**
   * A rate as labels write it, for example {@code "0.75 g/m row"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerRowLength parse(String text) {
    return RateReader.only(text, ProductPerRowLength.class, RateKind.PRODUCT_PER_ROW_LENGTH);
  }

  /**
   * The amount for a length of row.
   *
   * @param row the length
   * @return low and high amount
   */
  public ProductAmount along(Length row) {
    return amount.times(row.metres() / per.inBaseUnit());
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_ROW_LENGTH;
  }

  @Override
  public String below() {
    return per + " row";
  }

  @Override
  public ProductPerRowLength withAmount(ProductAmount other) {
    return new ProductPerRowLength(other, per);
  }

  @Override
  public ProductPerRowLength low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerRowLength high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
