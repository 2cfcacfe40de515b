package agro.weather.log;

import agro.reading.DelimitedFormat;
import agro.report.InputProblem;
import agro.units.TemperatureUnit;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * How a temperature log is written. What is declared here is not guessed. What is left open is
 * detected by evidence in the file or assumed, and the report says which.
 *
 * <p>{@link #detect()} leaves everything open. {@link #readings()} and {@link #dailyExtremes()}
 * declare a plain table, with headings in its first line, and refuse whatever else they meet.
 *
 * @param table how the text makes a table
 * @param columns names of the columns, for readings or for daily extremes; detected when empty
 * @param sensor heading of the temperatures to take where there are several; part of a heading will
 *     do when only one has it
 * @param times how times are written and what they mean
 * @param unit unit of the temperatures; detected, or else taken for °C, when empty
 * @param missing what stands for a missing value besides an empty cell, for example {@code "-999"};
 *     the usual codes are looked for when empty
 * @param completeness when a day of readings counts
 */
public record LogFormat(
    TableForm table,
    Optional<LogColumns> columns,
    Optional<String> sensor,
    TimeForm times,
    Optional<TemperatureUnit> unit,
    Optional<Set<String>> missing,
    CompletenessRule completeness) {

  /** What a line of the log holds. */
  public enum Kind {
    /** Readings, several a day. */
    READINGS,
    /** The lowest and the highest temperature of a day. */
    DAILY_EXTREMES
  }

  private static final LogFormat DETECT =
      new LogFormat(
          TableForm.OPEN,
          Optional.empty(),
          Optional.empty(),
          TimeForm.OPEN,
          Optional.empty(),
          Optional.empty(),
          CompletenessRule.USUAL);

  /** Refuses nulls. */
  public LogFormat {
    Objects.requireNonNull(table, "table");
    Objects.requireNonNull(columns, "columns");
    Objects.requireNonNull(sensor, "sensor");
    Objects.requireNonNull(times, "times");
    Objects.requireNonNull(unit, "unit");
    missing = missing.map(Set::copyOf);
    Objects.requireNonNull(completeness, "completeness");
  }

  /**
   * A log of which nothing is declared: all is detected.
   *
   * @return the format, to be declared further with the methods below
   */
  public static LogFormat detect() {
    return DETECT;
  }

  /**
   * A log of readings with the columns {@code time} and {@code temperature}, commas between the
   * cells, times after ISO 8601 and everything else left open.
   *
   * @return the format, to be declared further with the methods below
   */
  public static LogFormat readings() {
    return plain(new LogColumns.Readings("time", "temperature"));
  }

  /**
   * A log of daily extremes with the columns {@code date}, {@code min} and {@code max}, commas
   * between the cells, dates after ISO 8601 and everything else left open.
   *
   * @return the format, to be declared further with the methods below
   */
  public static LogFormat dailyExtremes() {
    return plain(new LogColumns.Extremes("date", "min", "max"));
  }

  private static LogFormat plain(LogColumns columns) {
    return DETECT
        .withTable(
            TableForm.OPEN
                .withCharset(StandardCharsets.UTF_8)
                .withSeparator(CellSeparator.COMMA)
                .withDecimalMark(DecimalMark.POINT)
                .withStrict(true))
        .withColumns(columns)
        .withMissingCodes(Set.of());
  }

  /**
   * Whether all is declared that is needed to read the log as a plain table, so that nothing is
   * detected.
   *
   * @return false when something is left open, or the log is no plain table
   */
  public boolean isPlain() {
    return table.strict()
        && table.headingLine().isEmpty()
        && table.firstLine().isEmpty()
        && table.separator().map(CellSeparator::isOneCharacter).orElse(false)
        && columns.map(each -> isOneTime(each.times())).orElse(false)
        && times.order().isEmpty()
        && times.serialDays().isEmpty()
        && times.timing().isEmpty()
        && times.observation().isEmpty();
  }

  private static boolean isOneTime(List<TimePartColumn> columns) {
    return columns.size() == 1 && columns.get(0).part() == TimePart.DATE_TIME;
  }

  /** The text of a plain table. */
  DelimitedFormat plainText() {
    return new DelimitedFormat(
        table.separator().orElse(CellSeparator.COMMA).character(),
        table.decimalMark().orElse(DecimalMark.POINT).character(),
        table.charset().orElse(StandardCharsets.UTF_8));
  }

  /** The columns of a plain table. */
  LogColumns plainColumns() {
    return columns.orElseThrow();
  }

  /**
   * What a line of the log holds, where the columns are declared.
   *
   * @return the kind that follows from the columns; empty when it is detected
   */
  public Optional<Kind> kind() {
    return columns.map(
        known -> known instanceof LogColumns.Readings ? Kind.READINGS : Kind.DAILY_EXTREMES);
  }

  /**
   * What was declared to stand for a missing value.
   *
   * @return the codes, none where none are declared
   */
  public Set<String> missingCodes() {
    return missing.orElse(Set.of());
  }

  /**
   * The line of Java that makes this format.
   *
   * @return a line to copy, in which all that is known is declared
   */
  public String declaration() {
    return FormatInJava.line(this);
  }

  private LogFormat withTable(TableForm newTable) {
    return new LogFormat(newTable, columns, sensor, times, unit, missing, completeness);
  }

  private LogFormat withTimes(TimeForm newTimes) {
    return new LogFormat(table, columns, sensor, newTimes, unit, missing, completeness);
  }

  /**
   * Declares separator, decimal mark and character set of a table with one character between cells.
   *
   * @param text how the file is written
   * @return a new format
   * @throws InputProblem when the separator is none of comma, semicolon, tab and vertical bar
   */
  public LogFormat withText(DelimitedFormat text) {
    for (var each : CellSeparator.values()) {
      if (each.isOneCharacter() && each.character() == text.separator()) {
        return withSeparator(each)
            .withDecimalMark(text.decimalMark() == ',' ? DecimalMark.COMMA : DecimalMark.POINT)
            .withCharset(text.charset());
      }
    }
    throw InputProblem.of("the cell separator is '" + text.separator() + "'")
        .expected("a comma, a semicolon, a tab or a vertical bar")
        .because("no logger is known to separate its cells by another character")
        .mend("declare one of these, or let it be detected");
  }

  /**
   * Declares the character set.
   *
   * @param charset character set of the file
   * @return a new format
   */
  public LogFormat withCharset(Charset charset) {
    return withTable(table.withCharset(charset));
  }

  /**
   * Declares what stands between cells.
   *
   * @param separator the separator
   * @return a new format
   */
  public LogFormat withSeparator(CellSeparator separator) {
    return withTable(table.withSeparator(separator));
  }

  /**
   * Declares the decimal mark.
   *
   * @param mark point or comma
   * @return a new format
   */
  public LogFormat withDecimalMark(DecimalMark mark) {
    return withTable(table.withDecimalMark(mark));
  }

  /**
   * Declares a table of fixed widths.
   *
   * @param starts where each field begins in a line, counted from 0
   * @return a new format
   */
  public LogFormat withFieldStarts(List<Integer> starts) {
    return withTable(table.withSeparator(CellSeparator.FIXED_WIDTH).withFieldStarts(starts));
  }

  /**
   * Declares where the headings stand.
   *
   * @param line line counted from 1; 0 for a log without headings
   * @return a new format
   */
  public LogFormat withHeadingLine(int line) {
    return withTable(table.withHeadingLine(line));
  }

  /**
   * Declares where the data begin.
   *
   * @param line line counted from 1
   * @return a new format
   */
  public LogFormat withFirstLine(int line) {
    return withTable(table.withFirstLine(line));
  }

  /**
   * Declares the columns.
   *
   * @param newColumns names for readings or for daily extremes
   * @return a new format
   */
  public LogFormat withColumns(LogColumns newColumns) {
    return new LogFormat(
        table, Optional.of(newColumns), sensor, times, unit, missing, completeness);
  }

  /**
   * Chooses one of several sensors of a log.
   *
   * @param heading heading of its column, or a part of it that no other column has
   * @return a new format
   */
  public LogFormat withSensor(String heading) {
    return new LogFormat(table, columns, Optional.of(heading), times, unit, missing, completeness);
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
    return withTimes(times.withPattern(pattern));
  }

  /**
   * Declares the order of day, month and year.
   *
   * @param order the order
   * @return a new format
   */
  public LogFormat withDateOrder(DateOrder order) {
    return withTimes(times.withOrder(order));
  }

  /**
   * Declares that times are numbers of days, as spreadsheets keep them.
   *
   * @param beginning beginning of the count
   * @return a new format
   */
  public LogFormat withSerialDays(SerialDays beginning) {
    return withTimes(times.withSerialDays(beginning));
  }

  /**
   * Declares the clock of the log.
   *
   * @param zone a fixed offset such as {@code ZoneOffset.ofHours(1)}, or a zone such as {@code
   *     ZoneId.of("Europe/Ljubljana")} for a clock that is set forward and back
   * @return a new format
   */
  public LogFormat withZone(ZoneId zone) {
    return withTimes(times.withZone(zone));
  }

  /**
   * Declares where the days of a log of readings are cut. Needed when the clock runs on UTC and the
   * days are to be those of the place.
   *
   * @param offset standard time of the place, for example {@code ZoneOffset.ofHours(1)}
   * @return a new format
   */
  public LogFormat withDayOffset(ZoneOffset offset) {
    return withTimes(times.withDayOffset(offset));
  }

  /**
   * Declares the time between readings.
   *
   * @param step a time above zero
   * @return a new format
   * @throws InputProblem when the step is not above zero
   */
  public LogFormat withStep(Duration step) {
    return withTimes(times.withStep(step));
  }

  /**
   * Declares what the time beside a reading means.
   *
   * @param timing moment, or end or beginning of an interval
   * @return a new format
   */
  public LogFormat withReadingTime(ReadingTime timing) {
    return withTimes(times.withTiming(timing));
  }

  /**
   * Declares when daily extremes were read off, and to which day the maximum belongs.
   *
   * @param observation time of the day, and day of the maximum
   * @return a new format
   */
  public LogFormat withExtremesReadAt(ExtremesReadAt observation) {
    return withTimes(times.withObservation(observation));
  }

  /**
   * Declares the unit of the temperatures.
   *
   * @param newUnit the unit
   * @return a new format
   */
  public LogFormat withUnit(TemperatureUnit newUnit) {
    return new LogFormat(
        table, columns, sensor, times, Optional.of(newUnit), missing, completeness);
  }

  /**
   * Declares what stands for a missing value besides an empty cell; nothing else is taken for one.
   *
   * @param codes texts such as {@code "-999"} or {@code "NA"}, compared as they are written
   * @return a new format
   */
  public LogFormat withMissingCodes(Set<String> codes) {
    return new LogFormat(table, columns, sensor, times, unit, Optional.of(codes), completeness);
  }

  /**
   * Declares when a day of readings counts.
   *
   * @param rule the rule
   * @return a new format
   */
  public LogFormat withCompleteness(CompletenessRule rule) {
    return new LogFormat(table, columns, sensor, times, unit, missing, rule);
  }
}
