package agro.weather.log;

/** In which order a log writes the parts of a date. */
public enum DateOrder {
  /** Year, month, day. */
  YEAR_FIRST("year, month, day", 0, 1, 2),
  /** Day, month, year. */
  DAY_FIRST("day, month, year", 2, 1, 0),
  /** Month, day, year. */
  MONTH_FIRST("month, day, year", 2, 0, 1);

  private final String words;
  private final int year;
  private final int month;
  private final int day;

  DateOrder(String words, int year, int month, int day) {
    this.words = words;
    this.year = year;
    this.month = month;
    this.day = day;
  }

  /**
   * The order in words.
   *
   * @return for example {@code "day, month, year"}
   */
  public String words() {
    return words;
  }

  int yearPlace() {
    return year;
  }

  int monthPlace() {
    return month;
  }

  int dayPlace() {
    return day;
  }
}
