package agro.dose;

/** The figures of a field through which one kind of rate becomes another. */
public enum StatedFigure {
  /** Volume of spray per area of the field. */
  SPRAY_VOLUME("spray volume of the sprayer", "L/ha", "spray(SprayVolume)"),
  /** Distance from row to row. */
  ROW_SPACING("distance from row to row", "m", "rows(Length)"),
  /** Plants on a hectare. */
  PLANTS("number of plants on a hectare", "plants/ha", "plants(Length, Length)"),
  /** Cells of a tray. */
  CELLS_PER_TRAY("number of cells in a tray", "cells", "cellsPerTray(int)"),
  /** Seed on a hectare. */
  SEED_RATE("seed rate", "kg/ha", "seedRate(MassPerArea)"),
  /** Mass of a thousand seeds. */
  THOUSAND_SEED_MASS("mass of a thousand seeds", "g", "thousandSeedMass(Mass)"),
  /** Substrate on a hectare, with its water. */
  WET_SUBSTRATE("wet mass of substrate on a hectare", "t/ha", "wetSubstrate(MassPerArea)"),
  /** Dry matter of the substrate on a hectare. */
  DRY_SUBSTRATE("dry mass of substrate on a hectare", "t/ha", "drySubstrate(MassPerArea)"),
  /** Width of the treated band on a row. */
  BAND_WIDTH("width of the treated band", "m", "bands(Length, Length)"),
  /** Tree-row volume of the orchard as it stands. */
  TREE_ROW_VOLUME("tree-row volume of the orchard", "m³/ha", "canopy(Canopy)"),
  /** Leaf-wall area of the orchard as it stands. */
  LEAF_WALL_AREA("leaf-wall area of the orchard", "m²/ha", "canopy(Canopy)"),
  /** Tree-row volume of the canopy that the label states as its reference. */
  LABEL_TREE_ROW_VOLUME(
      "tree-row volume of the reference canopy that the label states",
      "m³/ha",
      "labelCanopy(Canopy)"),
  /** Leaf-wall area of the canopy that the label states as its reference. */
  LABEL_LEAF_WALL_AREA(
      "leaf-wall area of the reference canopy that the label states",
      "m²/ha",
      "labelCanopy(Canopy)"),
  /** Spots on a hectare. */
  SPOTS("number of spots on a hectare", "spots/ha", "spots(double)");

  private final String words;
  private final String unit;
  private final String method;

  StatedFigure(String words, String unit, String method) {
    this.words = words;
    this.unit = unit;
    this.method = method;
  }

  /**
   * The figure in words.
   *
   * @return for example {@code "seed rate"}
   */
  public String words() {
    return words;
  }

  /**
   * The unit in which it is counted here.
   *
   * @return for example {@code "kg/ha"}
   */
  public String unit() {
    return unit;
  }

  /** The method of {@link FieldFigures} that states it. */
  String method() {
    return method;
  }
}
