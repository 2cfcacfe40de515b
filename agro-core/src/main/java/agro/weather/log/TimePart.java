package agro.weather.log;

/** What a column of a log holds of the time. */
public enum TimePart {
  /** Date and time of the day, or a date alone. */
  DATE_TIME,
  /** A date, with the time of the day in another column. */
  DATE,
  /** A time of the day, such as 13:30, 1330 or 1:30 PM. */
  CLOCK,
  /** AM or PM. */
  HALF_DAY,
  /** Year, of four digits. */
  YEAR,
  /** Number or name of the month. */
  MONTH,
  /** Day of the month. */
  DAY,
  /** Number of the day in the year. */
  DAY_OF_YEAR,
  /** Hour, 0 to 24; in numbers above 24, hours and minutes such as 1330. */
  HOUR,
  /** Minute. */
  MINUTE,
  /** Seconds since 1970-01-01T00:00Z, or thousandths of them in numbers of 13 digits. */
  UNIX,
  /** Days and their fraction since a beginning that is declared, as spreadsheets count. */
  SERIAL
}
