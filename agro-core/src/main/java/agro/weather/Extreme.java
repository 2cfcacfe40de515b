package agro.weather;

import java.time.LocalDate;

/** One of the two extremes of a day. */
public enum Extreme {
  /** The lowest temperature. */
  MINIMUM("minimum", "minima") {
    @Override
    public double of(DailyTemperatures series, LocalDate day) {
      return series.minCelsius(day);
    }

    @Override
    public double standardError(DailyTemperatures series, LocalDate day) {
      return series.minStandardErrorCelsius(day);
    }
  },
  /** The highest temperature. */
  MAXIMUM("maximum", "maxima") {
    @Override
    public double of(DailyTemperatures series, LocalDate day) {
      return series.maxCelsius(day);
    }

    @Override
    public double standardError(DailyTemperatures series, LocalDate day) {
      return series.maxStandardErrorCelsius(day);
    }
  };

  private final String words;
  private final String plural;

  Extreme(String words, String plural) {
    this.words = words;
    this.plural = plural;
  }

  /**
   * The extreme of a day.
   *
   * @param series daily extremes
   * @param day any day
   * @return °C; NaN when the day is missing
   */
  public abstract double of(DailyTemperatures series, LocalDate day);

  /**
   * The standard error of the extreme of a day.
   *
   * @param series daily extremes
   * @param day any day
   * @return °C; 0 for a day taken as exact, NaN when the day is missing
   */
  public abstract double standardError(DailyTemperatures series, LocalDate day);

  /**
   * The extreme in words.
   *
   * @return a word in lower case
   */
  public String words() {
    return words;
  }

  /**
   * Many of them in words.
   *
   * @return a word in lower case
   */
  public String plural() {
    return plural;
  }
}
