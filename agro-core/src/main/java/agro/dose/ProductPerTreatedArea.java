package agro.dose;

import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.MassPerArea;
import agro.units.QuantityRange;
import agro.units.VolumePerArea;
import java.util.Objects;

/**
 * Product per area that is really treated: the bands of the rows or the spots, and not the field
 * around them. A field needs less than this by the share that is treated.
 *
 * @param amount product above the line
 * @param per treated area that it is for
 */
public record ProductPerTreatedArea(ProductAmount amount, WrittenAmount<Area> per)
    implements ProductRate {

  /** Refuses nulls. */
  public ProductPerTreatedArea {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
  }

  /**
   * A rate as labels write it, for example {@code "0.75 L/ha treated area"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerTreatedArea parse(String text) {
    return RateReader.only(text, ProductPerTreatedArea.class, RateKind.PRODUCT_PER_TREATED_AREA);
  }

  /**
   * A rate of a liquid product.
   *
   * @param range low and high volume per area
   * @return the rate, written per hectare
   */
  public static ProductPerTreatedArea liquid(QuantityRange<VolumePerArea> range) {
    var hectare = new Area(10_000);
    var volume = new QuantityRange<>(range.low().times(hectare), range.high().times(hectare));
    return new ProductPerTreatedArea(
        ProductAmount.liquid(volume), WrittenAmount.one(AreaUnit.HECTARE));
  }

  /**
   * A rate of a solid product.
   *
   * @param range low and high mass per area
   * @return the rate, written per hectare
   */
  public static ProductPerTreatedArea solid(QuantityRange<MassPerArea> range) {
    var hectare = new Area(10_000);
    var mass = new QuantityRange<>(range.low().times(hectare), range.high().times(hectare));
    return new ProductPerTreatedArea(
        ProductAmount.solid(mass), WrittenAmount.one(AreaUnit.HECTARE));
  }

  /**
   * A rate of any product, written per hectare.
   *
   * @param amount product for one hectare
   * @return the rate
   */
  public static ProductPerTreatedArea ofHectare(ProductAmount amount) {
    return new ProductPerTreatedArea(amount, WrittenAmount.one(AreaUnit.HECTARE));
  }

  /**
   * The amount for one hectare that is treated.
   *
   * @return low and high amount
   */
  public ProductAmount perHectare() {
    return amount.times(10_000 / per.inBaseUnit());
  }

  /**
   * The amount for an area that is treated.
   *
   * @param area the area
   * @return low and high amount
   */
  public ProductAmount on(Area area) {
    return amount.times(area.squareMetres() / per.inBaseUnit());
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_TREATED_AREA;
  }

  @Override
  public String below() {
    return per + " treated area";
  }

  @Override
  public ProductPerTreatedArea withAmount(ProductAmount other) {
    return new ProductPerTreatedArea(other, per);
  }

  @Override
  public ProductPerTreatedArea low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerTreatedArea high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
