package agro.weather.archive;

import java.time.DateTimeException;
import java.time.LocalDate;

/**
 * One value of the archive as it is written.
 *
 * @param line number of the line
 * @param station identification of the station, 11 characters
 * @param day calendar day
 * @param element four letters, such as TMAX
 * @param tenths value in tenths of a degree Celsius for temperatures; {@link #MISSING} for none
 * @param qualityFlag letter of the failed check, or a blank
 * @param observationTime hour and minute of the observation, such as 0700, or empty
 */
record GhcnLine(
    long line,
    String station,
    LocalDate day,
    String element,
    int tenths,
    char qualityFlag,
    String observationTime) {

  static final int MISSING = -9999;

  boolean isMissing() {
    return tenths == MISSING;
  }

  /** The calendar day, or null when there is none with that number, such as 31 June. */
  static LocalDate dayOrNull(int year, int month, int day) {
    try {
      return LocalDate.of(year, month, day);
    } catch (DateTimeException e) {
      return null;
    }
  }
}
