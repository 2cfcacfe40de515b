package agro.weather.log;

/** What the time beside a reading means. */
public enum ReadingTime {
  /** The temperature was measured at that moment. */
  INSTANT("the moment of the reading"),
  /** The temperature is of an interval that ends at that time. */
  INTERVAL_END("the end of the interval that the reading is of"),
  /** The temperature is of an interval that begins at that time. */
  INTERVAL_START("the beginning of the interval that the reading is of");

  private final String words;

  ReadingTime(String words) {
    this.words = words;
  }

  /**
   * The meaning in words.
   *
   * @return for example {@code "the moment of the reading"}
   */
  public String words() {
    return words;
  }
}
