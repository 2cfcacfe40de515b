package agro.dose;

import agro.units.Volume;
import java.util.Objects;

/**
 * Active ingredient per volume of finished spray.
 *
 * @param amount active ingredient above the line
 * @param per volume of finished spray
 */
public record ActivePerSprayVolume(ActiveAmount amount, WrittenAmount<Volume> per)
    implements ActiveRate {

  /** Refuses nulls. */
  public ActivePerSprayVolume {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
  }

  /**
   * A rate as labels write it, for example {@code "20 g ai/100 L"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ActivePerSprayVolume parse(String text) {
    return RateReader.only(text, ActivePerSprayVolume.class, RateKind.ACTIVE_PER_SPRAY_VOLUME);
  }

  /**
   * The amount in a volume of finished spray.
   *
   * @param spray the volume
   * @return low and high amount
   */
  public ActiveAmount in(Volume spray) {
    return amount.times(spray.litres() / per.inBaseUnit());
  }

  /**
   * The rate of product that holds this active ingredient.
   *
   * @param strength strength of the product
   * @param state whether the product is measured or weighed
   * @return rate of product, written per the same amount
   */
  public ProductPerSprayVolume product(ActiveStrength strength, ProductState state) {
    return new ProductPerSprayVolume(strength.productFor(amount, state), per);
  }

  @Override
  public RateKind kind() {
    return RateKind.ACTIVE_PER_SPRAY_VOLUME;
  }

  @Override
  public String below() {
    return per + " spray";
  }

  @Override
  public ActivePerSprayVolume withAmount(ActiveAmount other) {
    return new ActivePerSprayVolume(other, per);
  }

  @Override
  public ActivePerSprayVolume low() {
    return withAmount(amount.low());
  }

  @Override
  public ActivePerSprayVolume high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
