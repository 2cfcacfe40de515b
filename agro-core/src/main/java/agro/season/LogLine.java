package agro.season;

import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.units.TemperatureUnit;
import agro.weather.log.CellSeparator;
import agro.weather.log.DecimalMark;
import agro.weather.log.LogColumns;
import agro.weather.log.LogFormat;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;

/** What a line of the table of logs says about the way a log is written. */
final class LogLine {

  private LogLine() {}

  /**
   * The format of a log. With separator, decimal mark and pattern of the time declared, it is a
   * plain table; what is left empty of these is detected in the log.
   */
  static LogFormat format(DelimitedLine line, LogKind kind) {
    var separator = line.optionalChoice("separator", Separator.class).map(LogLine::separator);
    var decimal = line.optionalChoice("decimal", DecimalMark.class);
    var pattern = line.optionalText("time_pattern");
    boolean isPlain = separator.isPresent() && decimal.isPresent() && pattern.isPresent();
    var format = isPlain ? LogFormat.readings() : LogFormat.detect();
    format = format.withColumns(columns(line, kind)).withUnit(unit(line));
    if (separator.isPresent()) {
      format = format.withSeparator(separator.get());
    }
    if (decimal.isPresent()) {
      format = format.withDecimalMark(decimal.get());
    }
    if (pattern.isPresent()) {
      format = format.withTimePattern(pattern.get());
    }
    if (isPlain || line.optionalText("missing").isPresent()) {
      format = format.withMissingCodes(missingCodes(line));
    }
    return kind == LogKind.READINGS ? clocked(line, format) : format;
  }

  private static LogColumns columns(DelimitedLine line, LogKind kind) {
    var time = line.text("time_column");
    return kind == LogKind.READINGS
        ? new LogColumns.Readings(time, line.text("value_column"))
        : new LogColumns.Extremes(time, line.text("min_column"), line.text("max_column"));
  }

  private static LogFormat clocked(DelimitedLine line, LogFormat format) {
    var clocked = line.optionalText("zone").isPresent() ? format.withZone(zone(line)) : format;
    return line.optionalText("day_offset")
        .map(text -> clocked.withDayOffset(dayOffset(line, text)))
        .orElse(clocked);
  }

  private static CellSeparator separator(Separator word) {
    return switch (word) {
      case COMMA -> CellSeparator.COMMA;
      case SEMICOLON -> CellSeparator.SEMICOLON;
      case TAB -> CellSeparator.TAB;
    };
  }

  private static TemperatureUnit unit(DelimitedLine line) {
    var text = line.text("unit");
    for (var unit : TemperatureUnit.values()) {
      if (text.equals(unit.symbol()) || text.equals(unit.ucum())) {
        return unit;
      }
    }
    throw InputProblem.at(line.location("unit"), "the cell reads \"" + text + "\"")
        .expected(
            Arrays.stream(TemperatureUnit.values())
                .map(unit -> unit.symbol() + " (" + unit.ucum() + ")")
                .collect(Collectors.joining(", ")))
        .because("a temperature without its unit is not known")
        .mend("write one of the symbols or UCUM codes, capitals as shown");
  }

  private static Set<String> missingCodes(DelimitedLine line) {
    return line.optionalText("missing")
        .map(codes -> Set.copyOf(Arrays.asList(codes.split("\\s+", -1))))
        .orElse(Set.of());
  }

  private static ZoneId zone(DelimitedLine line) {
    var text = line.text("zone");
    try {
      return ZoneId.of(text);
    } catch (DateTimeException e) {
      throw InputProblem.at(line.location("zone"), "the cell reads \"" + text + "\"")
          .expected("a region such as Europe/Ljubljana, an offset such as +01:00, or UTC")
          .because("the days of the readings depend on their clock")
          .mend("write the region whose clock the logger shows, or its offset from UTC");
    }
  }

  private static ZoneOffset dayOffset(DelimitedLine line, String text) {
    try {
      return ZoneOffset.of(text);
    } catch (DateTimeException e) {
      throw InputProblem.at(line.location("day_offset"), "the cell reads \"" + text + "\"")
          .expected("an offset from UTC such as +01:00")
          .because("days are cut at the midnights of one offset the whole year")
          .mend("write sign, two digits of hours, a colon and two digits of minutes");
    }
  }

  /** The words of the column {@code separator}. */
  enum Separator {
    COMMA,
    SEMICOLON,
    TAB
  }
}
