package agro.dose;

import agro.units.VolumeUnit;

/** The arithmetic between product per area and product per volume of spray. */
final class RateArithmetic {

  private static final double WRITTEN_LITRES = 100;

  private RateArithmetic() {}

  /** Product per 100 L: product per hectare × 100 L ÷ L/ha. */
  static ProductPerSprayVolume inSpray(ProductPerArea dose, SprayVolume spray) {
    double share = WRITTEN_LITRES / spray.perArea().litresPerHectare();
    return new ProductPerSprayVolume(
        dose.perHectare().times(share), new WrittenAmount<>(WRITTEN_LITRES, VolumeUnit.LITRE));
  }

  /** Product per hectare: product per litre × L/ha. */
  static ProductPerArea sprayed(ProductPerSprayVolume rate, SprayVolume spray) {
    double litres = spray.perArea().litresPerHectare();
    return ProductPerArea.ofHectare(rate.amount().times(litres / rate.per().inBaseUnit()));
  }
}
