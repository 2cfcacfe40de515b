package agro.dose;

import agro.units.Area;
import agro.units.AreaUnit;
import java.util.Objects;

/**
 * Active ingredient per ground area of the field.
 *
 * @param amount active ingredient above the line
 * @param per ground area that it is for
 */
public record ActivePerArea(ActiveAmount amount, WrittenAmount<Area> per)
    implements ActiveRate, DosePerArea {

  /** Refuses nulls. */
  public ActivePerArea {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
  }

  /**
   * A rate as labels write it, for example {@code "100 g ai/ha"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ActivePerArea parse(String text) {
    return RateReader.only(text, ActivePerArea.class, RateKind.ACTIVE_PER_AREA);
  }

  /**
   * A rate written per hectare.
   *
   * @param amount active ingredient for one hectare
   * @return the rate
   */
  public static ActivePerArea ofHectare(ActiveAmount amount) {
    return new ActivePerArea(amount, WrittenAmount.one(AreaUnit.HECTARE));
  }

  /**
   * The amount for one hectare of the field.
   *
   * @return low and high amount
   */
  public ActiveAmount perHectare() {
    return amount.times(10_000 / per.inBaseUnit());
  }

  /**
   * The amount for an area of the field.
   *
   * @param area the area
   * @return low and high amount
   */
  public ActiveAmount on(Area area) {
    return amount.times(area.squareMetres() / per.inBaseUnit());
  }

  /**
   * The rate of product that holds this active ingredient.
   *
   * @param strength strength of the product
   * @param state whether the product is measured or weighed
   * @return rate of product, written per the same amount
   */
  public ProductPerArea product(ActiveStrength strength, ProductState state) {
    return new ProductPerArea(strength.productFor(amount, state), per);
  }

  @Override
  public RateKind kind() {
    return RateKind.ACTIVE_PER_AREA;
  }

  @Override
  public String below() {
    return per.toString();
  }

  @Override
  public ActivePerArea withAmount(ActiveAmount other) {
    return new ActivePerArea(other, per);
  }

  @Override
  public ActivePerArea low() {
    return withAmount(amount.low());
  }

  @Override
  public ActivePerArea high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
