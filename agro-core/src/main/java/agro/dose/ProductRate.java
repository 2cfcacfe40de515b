package agro.dose;

import agro.units.QuantityStyle;

/** A rate of formulated product. */
public sealed interface ProductRate extends LabelRate
    permits ProductPerArea,
        ProductPerTreatedArea,
        ProductPerSprayVolume,
        ProductPerPlant,
        ProductPerTray,
        ProductPerRowLength,
        ProductPerSeedMass,
        ProductPerSeedCount,
        ProductPerWetSubstrate,
        ProductPerDrySubstrate,
        ProductPerTreeRowVolume,
        ProductPerLeafWallArea,
        ProductPerSpot {

  /**
   * What stands above the line.
   *
   * @return the amount for what stands below the line
   */
  ProductAmount amount();

  /**
   * A rate of the same kind and the same amount below the line.
   *
   * @param amount other amount above the line
   * @return the rate
   */
  ProductRate withAmount(ProductAmount amount);

  @Override
  default boolean isSingle() {
    return amount().isSingle();
  }

  @Override
  ProductRate low();

  @Override
  ProductRate high();

  @Override
  default String print(QuantityStyle style) {
    return RatePrint.product(this, style);
  }
}
