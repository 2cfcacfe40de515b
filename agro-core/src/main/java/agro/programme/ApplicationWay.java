package agro.programme;

/** How a product was brought out. */
public enum ApplicationWay {
  /** Spray over the field. */
  SPRAY,
  /** Spray on bands or rows only. */
  BAND_SPRAY,
  /** Poured to the roots in the field. */
  DRENCH,
  /** Granules on or in the soil. */
  GRANULES,
  /** Bait. */
  BAIT,
  /** On the seed. */
  SEED_TREATMENT,
  /** Spray in the nursery. */
  NURSERY_SPRAY,
  /** Poured to the roots in the nursery. */
  NURSERY_DRENCH,
  /** As a gas, smoke or fog. */
  FUMIGATION;

  /**
   * Whether the plants were treated before they came into the field.
   *
   * @return true for seed and nursery
   */
  public boolean beforeTheField() {
    return this == SEED_TREATMENT || this == NURSERY_SPRAY || this == NURSERY_DRENCH;
  }
}
