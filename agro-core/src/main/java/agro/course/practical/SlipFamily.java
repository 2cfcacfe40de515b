package agro.course.practical;

/** Where a slip in a dose happens. */
public enum SlipFamily {
  /** Units of land and the area of the plot. */
  LAND,
  /** Units of volume and mass, spoons and scales. */
  MEASURE,
  /** Strength of the product and of the spray. */
  STRENGTH,
  /** Pump, tank and loads. */
  TANK,
  /** The sprayer and the one who carries it. */
  SPRAYER,
  /** Numbers as they are written and read. */
  WRITING
}
