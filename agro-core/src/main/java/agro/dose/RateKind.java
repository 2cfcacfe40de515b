package agro.dose;

/** The kinds of rates that labels state. */
public enum RateKind {
  /** Product per ground area of the field. */
  PRODUCT_PER_AREA("product per area of the field", "0.75 L/ha"),
  /** Product per area that is really treated, as in bands and spots. */
  PRODUCT_PER_TREATED_AREA("product per treated area", "0.75 L/ha treated area"),
  /** Product per volume of finished spray. */
  PRODUCT_PER_SPRAY_VOLUME("product per volume of spray", "50 mL/100 L"),
  /** Product per plant or planting place. */
  PRODUCT_PER_PLANT("product per plant", "5 mL/plant"),
  /** Product per tray of seedlings. */
  PRODUCT_PER_TRAY("product per tray", "2 g/tray"),
  /** Product per length of row. */
  PRODUCT_PER_ROW_LENGTH("product per metre of row", "0.75 g/m row"),
  /** Product per mass of seed. */
  PRODUCT_PER_SEED_MASS("product per mass of seed", "4 g/kg seed"),
  /** Product per number of seeds. */
  PRODUCT_PER_SEED_COUNT("product per number of seeds", "80 mL/100000 seeds"),
  /** Product per mass of manure, compost or soil as it lies, with its water. */
  PRODUCT_PER_WET_SUBSTRATE("product per mass of wet substrate", "2 kg/t manure (wet)"),
  /** Product per mass of the dry matter of manure, compost or soil. */
  PRODUCT_PER_DRY_SUBSTRATE("product per mass of dry substrate", "2 kg/t manure (dry)"),
  /** Product per volume of the tree rows. */
  PRODUCT_PER_TREE_ROW_VOLUME("product per tree-row volume", "20 mL/1000 m³ TRV"),
  /** Product per area of the leaf walls. */
  PRODUCT_PER_LEAF_WALL_AREA("product per leaf-wall area", "0.5 L/10000 m² LWA"),
  /** Product per spot. */
  PRODUCT_PER_SPOT("product per spot", "10 mL/spot"),
  /** Active ingredient per ground area of the field. */
  ACTIVE_PER_AREA("active ingredient per area of the field", "100 g ai/ha"),
  /** Active ingredient per volume of finished spray. */
  ACTIVE_PER_SPRAY_VOLUME("active ingredient per volume of spray", "20 g ai/100 L"),
  /** Active ingredient per mass of seed. */
  ACTIVE_PER_SEED_MASS("active ingredient per mass of seed", "0.5 g ai/kg seed");

  private final String words;
  private final String example;

  RateKind(String words, String example) {
    this.words = words;
    this.example = example;
  }

  /**
   * The kind in words.
   *
   * @return for example {@code "product per area of the field"}
   */
  public String words() {
    return words;
  }

  /**
   * A rate of this kind as it is written.
   *
   * @return a text that {@link LabelRate#parse} reads as this kind
   */
  public String example() {
    return example;
  }
}
