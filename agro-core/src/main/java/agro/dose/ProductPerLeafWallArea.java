package agro.dose;

import agro.units.Area;
import java.util.Objects;

/**
 * Product per area of the leaf walls: both sides of all rows over the treated height.
 *
 * @param amount product above the line
 * @param per area of the leaf walls
 */
public record ProductPerLeafWallArea(ProductAmount amount, WrittenAmount<Area> per)
    implements ProductRate {

  /** Refuses nulls. */
  public ProductPerLeafWallArea {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(per, "per");
  }

  /**
   * A rate as labels write it, for example {@code "0.5 L/10000 m² LWA"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerLeafWallArea parse(String text) {
    return RateReader.only(text, ProductPerLeafWallArea.class, RateKind.PRODUCT_PER_LEAF_WALL_AREA);
  }

  /**
   * The dose per ground area for the walls that really stand there: dose per wall area times wall
   * area per hectare of ground.
   *
   * @param walls leaf-wall area per hectare of ground
   * @return product per hectare of ground; to be compared with the maximum per hectare of the label
   */
  public ProductPerArea on(LeafWallArea walls) {
    return ProductPerArea.ofHectare(
        amount.times(walls.squareMetresPerHectare() / per.inBaseUnit()));
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_LEAF_WALL_AREA;
  }

  @Override
  public String below() {
    return per + " LWA";
  }

  @Override
  public ProductPerLeafWallArea withAmount(ProductAmount other) {
    return new ProductPerLeafWallArea(other, per);
  }

  @Override
  public ProductPerLeafWallArea low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerLeafWallArea high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
