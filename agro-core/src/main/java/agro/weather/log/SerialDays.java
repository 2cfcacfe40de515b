package agro.weather.log;

import java.time.LocalDate;

/** Counts of days in which spreadsheets keep their times; the time of the day is a fraction. */
public enum SerialDays {
  /**
   * Day 1 is 1 January 1900. Since these counts hold a 29 February 1900 that never was, numbers
   * from 61 on are counted from 30 December 1899; smaller ones are refused.
   */
  SINCE_1900(LocalDate.of(1899, 12, 30)),
  /** Day 0 is 1 January 1904. */
  SINCE_1904(LocalDate.of(1904, 1, 1));

  private static final int FIRST_SURE_DAY = 61;
  private static final int LAST_DAY = 91_000;
  private static final int SECONDS_OF_DAY = 86_400;

  private final LocalDate dayZero;

  SerialDays(LocalDate dayZero) {
    this.dayZero = dayZero;
  }

  /**
   * Whether a number can be a count of days of a log.
   *
   * @param days number of days with their fraction
   * @return true from March 1900 to about the year 2150
   */
  boolean holds(double days) {
    return days >= FIRST_SURE_DAY && days < LAST_DAY;
  }

  /** Seconds from 1970-01-01T00:00 on the clock of the log, to the nearest second. */
  long localSeconds(double days) {
    return dayZero.toEpochDay() * SECONDS_OF_DAY + Math.round(days * SECONDS_OF_DAY);
  }
}
