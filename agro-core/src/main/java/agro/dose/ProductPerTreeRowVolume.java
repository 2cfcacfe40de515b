package agro.dose;

import agro.units.Volume;
import java.util.Objects;

/**
 * Product per volume of the tree rows: height times width times length of the rows.
 *
 * @param amount product above the line
 * @param per volume of the rows
 */
public record ProductPerTreeRowVolume(ProductAmount amount, WrittenAmount<Volume> per)
    implements ProductRate {

  /** Refuses nulls. */
  public ProductPerTreeRowVolume {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
  }

  /**
   * A rate as labels write it, for example {@code "20 mL/1000 m³ TRV"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerTreeRowVolume parse(String text) {
    return RateReader.only(
        text, ProductPerTreeRowVolume.class, RateKind.PRODUCT_PER_TREE_ROW_VOLUME);
  }

  /**
   * The dose per ground area for the rows that really stand there.
   *
   * @param rows tree-row volume per hectare of ground
   * @return product per hectare of ground; to be compared with the maximum per hectare of the label
   */
  public ProductPerArea on(TreeRowVolume rows) {
    return ProductPerArea.ofHectare(
        amount.times(rows.cubicMetresPerHectare() * 1000 / per.inBaseUnit()));
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_TREE_ROW_VOLUME;
  }

  @Override
  public String below() {
    return per + " TRV";
  }

  @Override
  public ProductPerTreeRowVolume withAmount(ProductAmount other) {
    return new ProductPerTreeRowVolume(other, per);
  }

  @Override
  public ProductPerTreeRowVolume low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerTreeRowVolume high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
