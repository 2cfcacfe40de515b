package agro.weather;

import agro.reading.DelimitedFormat;
import agro.report.InputProblem;
import agro.units.TemperatureUnit;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * How a temperature log is written. What is declared here is not guessed; what is left open is
 * assumed when the log is read, and the report says so.
 *
 * @param text separator, decimal mark and character set
 * @param columns names of the columns, for readings or for daily extremes
 * @param timePattern pattern of date and time in the letters of {@link
 *     java.time.format.DateTimeFormatter}, for example {@code "dd.MM.yyyy HH:mm"}; ISO 8601 when
 *     empty
 * @param zone clock of a log of readings: a fixed offset, or a zone whose civil clock changes; when
 *     empty, the clock is taken to keep one time all year. Times with an offset of their own do not
 *     need it
 * @param dayOffset offset from UTC at whose midnight the days of a log of readings are cut, all
 *     year; when empty, the standard time of the zone
 * @param unit unit of the temperatures; taken for °C when empty
 * @param missingCodes what stands for a missing value besides an empty cell, for example {@code
 *     "-999"}
 * @param step time between readings; the median distance when empty
 * @param completeness when a day of readings counts
 */
public record LogFormat(
    DelimitedFormat text,
    LogColumns columns,
    Optional<String> timePattern,
    Optional<ZoneId> zone,
    Optional<ZoneOffset> dayOffset,
    Optional<TemperatureUnit> unit,
    Set<String> missingCodes,
    Optional<Duration> step,
    CompletenessRule completeness) {

  /** What a line of the log holds. */
  public enum Kind {
    /** Readings, several a day. */
    READINGS,
    /** The lowest and the highest temperature of a day. */
    DAILY_EXTREMES
  }

  /**
   * Checks the pattern and the step.
   *
   * @throws InputProblem when the pattern cannot be read or the step is not above zero
   */
  public LogFormat {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(columns, "columns");
    Objects.requireNonNull(zone, "zone");
    Objects.requireNonNull(dayOffset, "dayOffset");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(completeness, "completeness");
    missingCodes = Set.copyOf(missingCodes);
    timePattern.ifPresent(TimePattern::of);
    if (step.isPresent() && (step.get().isNegative() || step.get().isZero())) {
      throw InputProblem.of("a step of " + step.get() + " between readings")
          .expected("a time above zero")
          .because("the step tells how many readings a complete day has")
          .mend("give for example Duration.ofHours(1), or leave it out to take it from the log");
    }
  }

  /**
   * A log of readings with the columns {@code time} and {@code temperature}, commas between the
   * cells and everything else left open.
   *
   * @return the format, to be declared further with the methods below
   */
  public static LogFormat readings() {
    return ofColumns(new LogColumns.Readings("time", "temperature"));
  }

  /**
   * A log of daily extremes with the columns {@code date}, {@code min} and {@code max}, commas
   * between the cells and everything else left open.
   *
   * @return the format, to be declared further with the methods below
   */
  public static LogFormat dailyExtremes() {
    return ofColumns(new LogColumns.Extremes("date", "min", "max"));
  }

  private static LogFormat ofColumns(LogColumns columns) {
    return new LogFormat(
        DelimitedFormat.COMMA,
        columns,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        Optional.empty(),
        CompletenessRule.USUAL);
  }

  /**
   * What a line of the log holds.
   *
   * @return the kind that follows from the columns
   */
  public Kind kind() {
    return columns instanceof LogColumns.Readings ? Kind.READINGS : Kind.DAILY_EXTREMES;
  }

  /**
   * Declares separator, decimal mark and character set.
   *
   * @param newText how the file is written
   * @return a new format
   */
  public LogFormat withText(DelimitedFormat newText) {
    return new LogFormat(
        newText, columns, timePattern, zone, dayOffset, unit, missingCodes, step, completeness);
  }

  /**
   * Declares the columns.
   *
   * @param newColumns names for readings or for daily extremes
   * @return a new format
   */
  public LogFormat withColumns(LogColumns newColumns) {
    return new LogFormat(
        text, newColumns, timePattern, zone, dayOffset, unit, missingCodes, step, completeness);
  }

  /**
   * Declares the pattern of date and time.
   *
   * @param pattern letters of {@link java.time.format.DateTimeFormatter}, for example {@code
   *     "dd.MM.yyyy HH:mm"}
   * @return a new format
   * @throws InputProblem when the pattern cannot be read
   */
  public LogFormat withTimePattern(String pattern) {
    return new LogFormat(
        text,
        columns,
        Optional.of(pattern),
        zone,
        dayOffset,
        unit,
        missingCodes,
        step,
        completeness);
  }

  /**
   * Declares the clock of the log.
   *
   * @param newZone a fixed offset such as {@code ZoneOffset.ofHours(1)}, or a zone such as {@code
   *     ZoneId.of("Europe/Ljubljana")} for a clock that is set forward and back
   * @return a new format
   */
  public LogFormat withZone(ZoneId newZone) {
    return new LogFormat(
        text,
        columns,
        timePattern,
        Optional.of(newZone),
        dayOffset,
        unit,
        missingCodes,
        step,
        completeness);
  }

  /**
   * Declares where the days of a log of readings are cut. Needed when the clock runs on UTC and the
   * days are to be those of the place.
   *
   * @param offset standard time of the place, for example {@code ZoneOffset.ofHours(1)}
   * @return a new format
   */
  public LogFormat withDayOffset(ZoneOffset offset) {
    return new LogFormat(
        text,
        columns,
        timePattern,
        zone,
        Optional.of(offset),
        unit,
        missingCodes,
        step,
        completeness);
  }

  /**
   * Declares the unit of the temperatures.
   *
   * @param newUnit the unit
   * @return a new format
   */
  public LogFormat withUnit(TemperatureUnit newUnit) {
    return new LogFormat(
        text,
        columns,
        timePattern,
        zone,
        dayOffset,
        Optional.of(newUnit),
        missingCodes,
        step,
        completeness);
  }

  /**
   * Declares what stands for a missing value besides an empty cell.
   *
   * @param codes texts such as {@code "-999"} or {@code "NA"}, compared as they are written
   * @return a new format
   */
  public LogFormat withMissingCodes(Set<String> codes) {
    return new LogFormat(
        text, columns, timePattern, zone, dayOffset, unit, codes, step, completeness);
  }

  /**
   * Declares the time between readings.
   *
   * @param newStep a time above zero
   * @return a new format
   * @throws InputProblem when the step is not above zero
   */
  public LogFormat withStep(Duration newStep) {
    return new LogFormat(
        text,
        columns,
        timePattern,
        zone,
        dayOffset,
        unit,
        missingCodes,
        Optional.of(newStep),
        completeness);
  }

  /**
   * Declares when a day of readings counts.
   *
   * @param rule the rule
   * @return a new format
   */
  public LogFormat withCompleteness(CompletenessRule rule) {
    return new LogFormat(
        text, columns, timePattern, zone, dayOffset, unit, missingCodes, step, rule);
  }
}
