package agro.dose;

import agro.units.QuantityStyle;

/**
 * A rate of active ingredient. It becomes a rate of product only through the strength of the
 * product, see {@link Strength}.
 */
public sealed interface ActiveRate extends LabelRate
    permits ActivePerArea, ActivePerSprayVolume, ActivePerSeedMass {

  /**
   * What stands above the line.
   *
   * @return the amount for what stands below the line
   */
  ActiveAmount amount();

  /**
   * A rate of the same kind and the same amount below the line.
   *
   * @param amount other amount above the line
   * @return the rate
   */
  ActiveRate withAmount(ActiveAmount amount);

  @Override
  default boolean isSingle() {
    return amount().isSingle();
  }

  @Override
  ActiveRate low();

  @Override
  ActiveRate high();

  @Override
  default String print(QuantityStyle style) {
    return RatePrint.active(this, style);
  }
}
