package agro.weather.quality;

/** Which value of a series a flag points at. */
public enum FlaggedValue {
  /** A reading, or a run of readings. */
  READING("reading"),
  /** The lowest temperature of a day. */
  MINIMUM("minimum"),
  /** The highest temperature of a day. */
  MAXIMUM("maximum"),
  /** Both extremes of a day. */
  BOTH_EXTREMES("both extremes");

  private final String words;

  FlaggedValue(String words) {
    this.words = words;
  }

  /**
   * The value in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }
}
