package agro.season;

/** The words of the column {@code kind} of the table of logs. */
enum LogKind {
  /** Several readings a day. */
  READINGS,
  /** The extremes of each day, as observed. */
  DAILY_EXTREMES,
  /** The extremes of coming days, as foreseen. */
  FORECAST_DAYS
}
