package agro.programme.window;

/** What a column of hourly weather holds. */
public enum WeatherKind {
  /** Mean wind. */
  WIND("wind"),
  /** Strongest gust. */
  GUST("gusts"),
  /** Rain since the reading before. */
  RAIN("rain"),
  /** Temperature of the air. */
  TEMPERATURE("temperature"),
  /** Relative humidity of the air. */
  HUMIDITY("humidity");

  private final String words;

  WeatherKind(String words) {
    this.words = words;
  }

  /**
   * The kind in words.
   *
   * @return a noun in lower case
   */
  public String words() {
    return words;
  }
}
