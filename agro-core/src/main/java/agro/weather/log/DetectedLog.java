package agro.weather.log;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.Medium;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Reads a log of which not everything is declared, stage by stage: bytes, text, table, roles of the
 * columns, times, values, readings, days.
 */
final class DetectedLog {

  /** Shorter files are read in no time in any way. */
  private static final int LEAST_SCANNED_BYTES = 50_000;

  private final LogFormat declared;
  private final String place;
  private final Medium medium;
  private final ReadReport.Collector report;
  private final RawTable table;
  private final ColumnContent content;
  private final Hints hints;
  private final LogTimes times;
  private final List<TimePartColumn> timeColumns;
  private final LogFormat known;
  private final byte[] bytes;

  DetectedLog(
      FileBytes bytes,
      String name,
      LogFormat declared,
      String place,
      Medium medium,
      Progress progress) {
    this(bytes, name, declared, place, medium, progress, LEAST_SCANNED_BYTES);
  }

  /** Scans a file from some length on, if it can be scanned; result and report are the same. */
  DetectedLog(
      FileBytes bytes,
      String name,
      LogFormat declared,
      String place,
      Medium medium,
      Progress progress,
      int leastScannedBytes) {
    this.declared = declared;
    this.place = place;
    this.medium = medium;
    report = new ReadReport.Collector(name);
    if (bytes.packed()) {
      report.add(Deed.NOTED, SourceLocation.file(name), "the file is packed with gzip");
    }
    this.bytes = bytes.bytes();
    boolean isLong = this.bytes.length >= leastScannedBytes;
    table =
        (isLong ? TableScan.find(this.bytes, name, declared, report) : Optional.<RawTable>empty())
            .orElseGet(this::tableInText);
    report.addAll(new ReadReport(name, table.rows().size(), List.of()));
    content = new ColumnContent(table);
    hints = new Hints(table, report);
    timeColumns = timeColumns();
    times =
        table
            .scanned()
            .flatMap(rows -> rows.times(table, timeColumns, declared.times()))
            .orElseGet(
                () -> new TimeReading(table, timeColumns, declared.times(), report).read(progress));
    known = known();
    tellTable();
    if (table.cutOff()) {
      report.add(
          Deed.NOTED,
          table.location(table.rows().get(table.rows().size() - 1), 0),
          "the last line has no end: if the file was cut off, its last value may be too");
    }
  }

  private RawTable tableInText() {
    var text = text(report);
    var form = declared.table().withCharset(text.charset());
    return TableFinding.find(report.report().source(), text.text(), form, report);
  }

  private DecodedText text(ReadReport.Collector told) {
    var name = told.report().source();
    return DecodedText.of(bytes, name, declared.table().charset(), told).requireText(name);
  }

  /**
   * Reads the part of a log that was known at some time. The dates of all lines are looked at;
   * everything else is detected and read from the lines of known days alone, in their old places.
   */
  static TemperatureLog readKnown(
      FileBytes bytes,
      String name,
      LogFormat declared,
      String place,
      Medium medium,
      Predicate<LocalDate> known,
      Progress progress) {
    var whole = new DetectedLog(bytes, name, declared, place, medium, progress);
    var hidden = whole.linesOfOtherDays(known);
    if (hidden.isEmpty()) {
      return whole.readOne();
    }
    var written = whole.text(new ReadReport.Collector(name)).text();
    var lines = written.split("\r\n|\r|\n", -1);
    hidden.stream().forEach(line -> lines[line - 1] = "");
    var kept = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    var format = declared.withCharset(StandardCharsets.UTF_8);
    return new DetectedLog(FileBytes.of(kept, name), name, format, place, medium, progress)
        .readOne();
  }

  private BitSet linesOfOtherDays(Predicate<LocalDate> known) {
    var hidden = new BitSet();
    for (int row = 0; row < times.size(); row++) {
      if (!known.test(times.day(row))) {
        hidden.set(table.line(row));
      }
    }
    return hidden;
  }

  private void tellTable() {
    var open = declared.table();
    if (open.separator().isEmpty()) {
      var heading = table.form().headingLine().orElse(0);
      report.add(
          Deed.NOTED,
          table.file(),
          "a table in "
              + table.form().charset().orElseThrow().name()
              + " with "
              + table.form().separator().orElseThrow().words()
              + " between its cells, "
              + (heading == 0 ? "without headings" : "headings on line " + heading)
              + ", data from line "
              + table.form().firstLine().orElse(1));
    }
  }

  private List<TimePartColumn> timeColumns() {
    if (declared.columns().isPresent()) {
      requireColumns(declared.columns().get());
      return declared.columns().get().times();
    }
    return new TimeRoles(table, content, report).find(declared.times().serialDays().isPresent());
  }

  private void requireColumns(LogColumns columns) {
    for (var column : columns.names()) {
      if (table.indexOf(column) < 0) {
        throw InputProblem.at(table.file(), "there is no column \"" + column + "\"")
            .expected("the columns " + String.join(", ", columns.names()) + ", as declared")
            .because("the table has " + String.join(", ", table.headings()))
            .mend("declare the columns by the names that they have");
      }
    }
  }

  /** The format with what the whole table has shown. */
  private LogFormat known() {
    var form = table.form();
    var format =
        declared
            .withCharset(form.charset().orElseThrow())
            .withSeparator(form.separator().orElseThrow())
            .withHeadingLine(form.headingLine().orElse(0))
            .withFirstLine(form.firstLine().orElse(1));
    if (!form.fieldStarts().isEmpty()) {
      format = format.withFieldStarts(form.fieldStarts());
    }
    if (times.order().isPresent()) {
      format = format.withDateOrder(times.order().get());
    }
    var zone = declared.times().zone().isPresent() ? declared.times().zone() : zone();
    return zone.isPresent() ? format.withZone(zone.get()) : format;
  }

  private Optional<ZoneId> zone() {
    return hints.zone(timeColumns);
  }

  /** The columns of each sensor. */
  private Map<String, LogColumns> sensors() {
    if (declared.columns().isPresent()) {
      return Map.of("declared", declared.columns().get());
    }
    var roles = new ValueRoles(table, content, timeColumns, report);
    return times.isDaily() ? roles.extremes() : roles.readings();
  }

  /** The log of the one sensor that there is, or of the one that was chosen. */
  TemperatureLog readOne() {
    var sensors = sensors();
    if (declared.sensor().isPresent() && declared.columns().isEmpty()) {
      var chosen = ValueRoles.chosen(sensors, declared.sensor().get(), table);
      return read(sensors.get(chosen), place);
    }
    if (sensors.size() > 1) {
      var names = String.join("\", \"", sensors.keySet());
      throw InputProblem.at(table.file(), "several sensors of temperature: \"" + names + "\"")
          .expected("one of them")
          .because("air, canopy and soil, or two places, must not be mixed up")
          .mend(
              "choose one: LogFormat.detect().withSensor(\""
                  + sensors.keySet().iterator().next()
                  + "\"), or take them all with TemperatureLog.readAll");
    }
    return read(sensors.values().iterator().next(), place);
  }

  /** The logs of all sensors by their headings. */
  Map<String, TemperatureLog> readAll() {
    var sensors = sensors();
    var logs = new LinkedHashMap<String, TemperatureLog>();
    for (var sensor : sensors.entrySet()) {
      var name = sensors.size() == 1 ? place : place + ", " + sensor.getKey();
      logs.put(sensor.getKey(), read(sensor.getValue(), name));
    }
    return logs;
  }

  private TemperatureLog read(LogColumns columns, String name) {
    var own = new ReadReport.Collector(table.name());
    own.addAll(report.report());
    HeadingMedium.noteContradiction(columns, medium, own, table.file());
    var format = known.withColumns(columns);
    if (columns instanceof LogColumns.Readings readings) {
      return readings(readings, format, own, name);
    }
    return extremes((LogColumns.Extremes) columns, format, own, name);
  }

  private int unitColumn() {
    for (int i = 0; i < table.headings().size(); i++) {
      if (content.isUnit(i)) {
        return i;
      }
    }
    return -1;
  }

  private TemperatureLog readings(
      LogColumns.Readings columns, LogFormat format, ReadReport.Collector own, String name) {
    int column = table.indexOf(columns.temperatureColumn());
    var mark = SensorValues.mark(table, new int[] {column}, format, own);
    var values = new SensorValues(table, column, format, mark);
    var celsius = values.celsius(hints, unitColumn(), own);
    var timing = declared.times().timing().or(() -> hints.timing(timeColumns));
    var series = new RowInstants(table, times, format.times(), own);
    return series.assembled(
        celsius, columns.temperatureColumn(), timing, complete(format, values, mark), name, medium);
  }

  private LogFormat complete(LogFormat format, SensorValues values, DecimalMark mark) {
    var complete = format.withDecimalMark(mark).withUnit(values.unit());
    return complete.missing().isPresent() ? complete : complete.withMissingCodes(values.codes());
  }

  private TemperatureLog extremes(
      LogColumns.Extremes columns, LogFormat format, ReadReport.Collector own, String name) {
    int low = table.indexOf(columns.minimumColumn());
    int high = table.indexOf(columns.maximumColumn());
    var mark = SensorValues.mark(table, new int[] {low, high}, format, own);
    var minima = new SensorValues(table, low, format, mark);
    var maxima = new SensorValues(table, high, format, mark);
    int unitColumn = unitColumn();
    // The maxima show sooner that the unit is another one.
    var max = maxima.celsius(hints, unitColumn, own);
    var min = minima.celsius(hints, unitColumn, own);
    if (minima.unit() != maxima.unit()) {
      throw hints.conflict(high, minima.unit(), maxima.unit());
    }
    var rows = new ExtremesRows(table, times, columns, own);
    var daily = rows.daily(min, max, format, hints.observed(), name, medium);
    var complete = complete(format, minima, mark);
    if (declared.missing().isEmpty()) {
      var codes = new TreeSet<>(minima.codes());
      codes.addAll(maxima.codes());
      complete = complete.withMissingCodes(codes);
    }
    return new TemperatureLog(daily, Optional.empty(), complete, own.report());
  }
}
