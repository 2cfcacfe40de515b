package agro.dose;

import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.MassPerArea;
import agro.units.QuantityRange;
import agro.units.VolumePerArea;
import java.util.Objects;

/**
 * Product per ground area of the field. It says nothing about the spray volume.
 *
 * @param amount product above the line
 * @param per ground area that it is for
 */
public record ProductPerArea(ProductAmount amount, WrittenAmount<Area> per)
    implements ProductRate, DosePerArea {

  /** Refuses nulls. */
  public ProductPerArea {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
  }

  /**
   * A rate as labels write it, for example {@code "250-300 mL/acre"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerArea parse(String text) {
    return RateReader.only(text, ProductPerArea.class, RateKind.PRODUCT_PER_AREA);
  }

  /**
   * A rate of a liquid product.
   *
   * @param range low and high volume per area
   * @return the rate, written per hectare
   */
  public static ProductPerArea liquid(QuantityRange<VolumePerArea> range) {
    var hectare = new Area(10_000);
    var volume = new QuantityRange<>(range.low().times(hectare), range.high().times(hectare));
    return new ProductPerArea(ProductAmount.liquid(volume), WrittenAmount.one(AreaUnit.HECTARE));
  }

  /**
   * A rate of a solid product.
   *
   * @param range low and high mass per area
   * @return the rate, written per hectare
   */
  public static ProductPerArea solid(QuantityRange<MassPerArea> range) {
    var hectare = new Area(10_000);
    var mass = new QuantityRange<>(range.low().times(hectare), range.high().times(hectare));
    return new ProductPerArea(ProductAmount.solid(mass), WrittenAmount.one(AreaUnit.HECTARE));
  }

  /**
   * A rate of any product, written per hectare.
   *
   * @param amount product for one hectare
   * @return the rate
   */
  public static ProductPerArea ofHectare(ProductAmount amount) {
    return new ProductPerArea(amount, WrittenAmount.one(AreaUnit.HECTARE));
  }

  /**
   * The amount for one hectare of the field.
   *
   * @return low and high amount
   */
  public ProductAmount perHectare() {
    return amount.times(10_000 / per.inBaseUnit());
  }

  /**
   * The amount for an area of the field.
   *
   * @param area the area
   * @return low and high amount
   */
  public ProductAmount on(Area area) {
    return amount.times(area.squareMetres() / per.inBaseUnit());
  }

  /**
   * The strength of the spray that carries this dose: dose per area divided by spray volume per
   * area.
   *
   * @param spray spray volume of the sprayer, above zero
   * @return product per 100 L of spray
   */
  public ProductPerSprayVolume inSpray(SprayVolume spray) {
    return RateArithmetic.inSpray(this, spray);
  }

  /**
   * The active ingredient in this rate of product.
   *
   * @param strength strength of the product
   * @return rate of active ingredient, written per the same amount
   * @throws agro.report.InputProblem if a density is missing
   */
  public ActivePerArea active(ActiveStrength strength) {
    return new ActivePerArea(strength.activeIn(amount), per);
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_AREA;
  }

  @Override
  public String below() {
    return per.toString();
  }

  @Override
  public ProductPerArea withAmount(ProductAmount other) {
    return new ProductPerArea(other, per);
  }

  @Override
  public ProductPerArea low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerArea high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
