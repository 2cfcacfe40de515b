package agro.dose;

import agro.units.Volume;
import java.util.Objects;

/**
 * Product per volume of finished spray. What an area gets depends on the spray volume of the
 * sprayer.
 *
 * @param amount product above the line
 * @param per volume of finished spray
 */
public record ProductPerSprayVolume(ProductAmount amount, WrittenAmount<Volume> per)
    implements ProductRate {

  /** Refuses nulls. */
  public ProductPerSprayVolume {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
  }

  /**
   * A rate as labels write it, for example {@code "50 mL/100 L"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerSprayVolume parse(String text) {
    return RateReader.only(text, ProductPerSprayVolume.class, RateKind.PRODUCT_PER_SPRAY_VOLUME);
  }

  /**
   * The amount in a volume of finished spray.
   *
   * @param spray the volume
   * @return low and high amount
   */
  public ProductAmount in(Volume spray) {
    return amount.times(spray.litres() / per.inBaseUnit());
  }

  /**
   * The amount in one litre of finished spray.
   *
   * @return low and high amount
   */
  public ProductAmount perLitre() {
    return amount.times(1 / per.inBaseUnit());
  }

  /**
   * The dose per area that a sprayer gives with this spray: amount per litre times litres per area.
   *
   * @param spray spray volume of the sprayer
   * @return product per hectare
   */
  public ProductPerArea sprayedAt(SprayVolume spray) {
    return RateArithmetic.sprayed(this, spray);
  }

  /**
   * The active ingredient in this rate of product.
   *
   * @param strength strength of the product
   * @return rate of active ingredient, written per the same amount
   * @throws agro.report.InputProblem if a density is missing
   */
  public ActivePerSprayVolume active(ActiveStrength strength) {
    return new ActivePerSprayVolume(strength.activeIn(amount), per);
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_SPRAY_VOLUME;
  }

  @Override
  public String below() {
    return per + " spray";
  }

  @Override
  public ProductPerSprayVolume withAmount(ProductAmount other) {
    return new ProductPerSprayVolume(other, per);
  }

  @Override
  public ProductPerSprayVolume low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerSprayVolume high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
