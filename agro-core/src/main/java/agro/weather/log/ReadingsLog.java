package agro.weather.log;

import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.Medium;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.Predicate;

/** Reads a log of several readings a day. */
final class ReadingsLog {

  private static final int ROWS_BETWEEN_STEPS = 20_000;
  private static final long DAY_SECONDS = 86_400;

  private final String name;
  private final LogFormat format;
  private final LogColumns.Readings columns;
  private final Predicate<LocalDate> known;
  private final TimePattern pattern;
  private final LogClock clock;
  private final ValueCells values;
  private final ReadReport.Collector collector;
  private final ReadingSeries readings;
  private final Tally repeated =
      new Tally(Deed.DROPPED, "a line that repeats the time and the value of the line before");

  private long lastSecond = Long.MIN_VALUE;
  private double lastCelsius = Double.NaN;

  ReadingsLog(
      String name,
      int mostRows,
      LogFormat format,
      LogColumns.Readings columns,
      Predicate<LocalDate> known) {
    this.name = name;
    this.format = format;
    this.columns = columns;
    this.known = known;
    pattern = format.times().pattern().map(TimePattern::of).orElse(TimePattern.iso());
    clock = new LogClock(format.times().zone(), format.times().dayOffset());
    values = new ValueCells(format, name, mostRows);
    collector = new ReadReport.Collector(name);
    readings = new ReadingSeries(name, columns.temperatureColumn(), mostRows);
  }

  static TemperatureLog read(
      DelimitedText text,
      LogFormat format,
      LogColumns.Readings columns,
      String place,
      Medium medium,
      Predicate<LocalDate> known,
      Progress progress) {
    var log = new ReadingsLog(text.name(), text.lines().size(), format, columns, known);
    LogLines.read(text, log::readLine, progress);
    return log.finished(place, medium);
  }

  /**
   * Reads the lines that a scan has taken. Nothing when lines are out of order: their messages
   * quote cells, so they are left to the way through text.
   */
  static Optional<TemperatureLog> read(
      String name,
      ReadingScan scan,
      LogFormat format,
      LogColumns.Readings columns,
      String place,
      Medium medium,
      Predicate<LocalDate> known,
      Progress progress) {
    var log = new ReadingsLog(name, scan.rows(), format, columns, known);
    var steady = new SteadyClock(format.times().zone());
    for (int row = 0; row < scan.rows(); row++) {
      if (row % ROWS_BETWEEN_STEPS == 0) {
        progress.step("reading " + name, row, scan.rows());
      }
      if (!log.readRow(scan, row, steady)) {
        return Optional.empty();
      }
    }
    progress.step("reading " + name, scan.rows(), scan.rows());
    return Optional.of(log.finished(place, medium));
  }

  private TemperatureLog finished(String place, Medium medium) {
    var file = SourceLocation.file(name);
    clock.tell(collector, file);
    values.tell(collector, file);
    repeated.tell(collector);
    readings.noteOddities(collector);
    var step = readings.step(format.times().step(), collector, file);
    var days = new DayAssembly(readings, clock.dayOffset(), step, format.completeness());
    return new TemperatureLog(
        days.daily(place, medium, collector, file),
        Optional.of(readings.readings(place, medium, clock.dayOffset())),
        format,
        collector.report());
  }

  private void readLine(DelimitedLine line) {
    var place = line.location(columns.timeColumn());
    var instant = clock.instant(pattern.parse(line.text(columns.timeColumn()), place), place);
    if (instant.isPresent() && !isKnown(instant.getAsLong())) {
      return;
    }
    collector.countRow();
    if (instant.isEmpty()) {
      return;
    }
    long second = instant.getAsLong();
    double celsius = values.celsius(line, columns.temperatureColumn());
    if (second <= lastSecond) {
      repeat(line, second, celsius);
      return;
    }
    lastSecond = second;
    lastCelsius = celsius;
    if (!Double.isNaN(celsius)) {
      readings.add(second, celsius, line.lineNumber());
    }
  }

  private boolean isKnown(long second) {
    return known == TemperatureLog.EVERY_DAY
        || known.test(
            LocalDate.ofEpochDay(
                Math.floorDiv(second + clock.dayOffset().getTotalSeconds(), DAY_SECONDS)));
  }

  /** Reads a row; false when it does not come after the row before it. */
  private boolean readRow(ReadingScan scan, int row, SteadyClock steady) {
    long local = scan.localSecond(row);
    long second;
    if (clock.hasBegun() && (scan.hasOffsets() || steady.isSteady(local))) {
      second = local - (scan.hasOffsets() ? scan.offset(row) : steady.offset());
    } else {
      var offset =
          scan.hasOffsets()
              ? Optional.of(ZoneOffset.ofTotalSeconds(scan.offset(row)))
              : Optional.<ZoneOffset>empty();
      var instant =
          clock.instant(
              new TimePattern.Stamp(local, offset), place(scan, row, columns.timeColumn()));
      if (instant.isEmpty()) {
        collector.countRow();
        return true;
      }
      second = instant.getAsLong();
    }
    if (!isKnown(second)) {
      return true;
    }
    collector.countRow();
    double celsius = celsius(scan, row);
    if (second <= lastSecond) {
      boolean same = second == lastSecond && Double.compare(celsius, lastCelsius) == 0;
      if (same) {
        repeated.add(SourceLocation.line(name, scan.line(row)));
      }
      return same;
    }
    lastSecond = second;
    lastCelsius = celsius;
    if (!Double.isNaN(celsius)) {
      readings.add(second, celsius, scan.line(row));
    }
    return true;
  }

  private double celsius(ReadingScan scan, int row) {
    double celsius = values.celsius(scan.value(row));
    if (Double.isNaN(celsius)) {
      values.leaveOut(scan.value(row), place(scan, row, columns.temperatureColumn()));
    }
    return celsius;
  }

  private SourceLocation place(ReadingScan scan, int row, String column) {
    return SourceLocation.line(name, scan.line(row)).column(column);
  }

  private void repeat(DelimitedLine line, long second, double celsius) {
    boolean sameTime = second == lastSecond;
    if (sameTime && Double.compare(celsius, lastCelsius) == 0) {
      repeated.add(line.location());
      return;
    }
    var cell = line.text(columns.timeColumn());
    throw InputProblem.at(
            line.location(columns.timeColumn()),
            sameTime
                ? "the time \"" + cell + "\" again, with another value"
                : "the time \"" + cell + "\" is earlier than the line before it")
        .expected("times in ascending order, each once")
        .because(
            sameTime
                ? "two temperatures at one moment cannot both hold"
                : "a log out of order may hold a wrong date, or two logs on top of each other")
        .mend(
            format.times().zone().isEmpty()
                ? "put the lines in order, or declare the time zone if the clock was set back here"
                : "put the lines in order, or correct the date");
  }
}
