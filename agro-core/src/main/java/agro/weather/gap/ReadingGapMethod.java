package agro.weather.gap;

/** What was done about a gap between readings. */
public enum ReadingGapMethod {
  /** A straight line between the readings before and after. */
  STRAIGHT_LINE("on a straight line"),
  /** The mean course of the same hours of neighbouring days, shifted to both known ends. */
  DIURNAL_SHAPE("after the same hours of neighbouring days"),
  /** Nothing. */
  LEFT_OPEN("left open");

  private final String words;

  ReadingGapMethod(String words) {
    this.words = words;
  }

  /**
   * The method in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }
}
