package agro.dose;

/** Over what a limit of a label is counted. */
public enum LimitScope {
  /** One application. */
  APPLICATION("per application"),
  /** One crop from sowing or planting to harvest. */
  CROP("per crop"),
  /** One growing season. */
  SEASON("per season"),
  /** Any twelve months in a row. */
  TWELVE_MONTHS("in twelve months"),
  /** One generation of the pest. */
  GENERATION("per generation of the pest"),
  /** All products of one mode-of-action group. */
  GROUP("per mode-of-action group"),
  /** All products with one active ingredient. */
  ACTIVE_INGREDIENT("per active ingredient");

  private final String words;

  LimitScope(String words) {
    this.words = words;
  }

  /**
   * The scope in words.
   *
   * @return for example {@code "per season"}
   */
  public String words() {
    return words;
  }
}
