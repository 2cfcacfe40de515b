package agro.weather;

/** The two media that a thermal requirement may have been measured in. */
public enum MediumKind {
  /** Air, whether in a shelter, a crop, a tunnel or a rearing cabinet. */
  AIR("air"),
  /** Soil at some depth. */
  SOIL("soil");

  private final String words;

  MediumKind(String words) {
    this.words = words;
  }

  /**
   * The medium in words.
   *
   * @return a word in lower case
   */
  public String words() {
    return words;
  }
}
