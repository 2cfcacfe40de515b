package agro.season;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.units.TemperatureUnit;
import agro.weather.LogColumns;
import agro.weather.LogFormat;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;

/** What a line of the table of logs says about the way a log is written. */
final class LogLine {

  private LogLine() {}

  static LogFormat format(DelimitedLine line, LogKind kind) {
    var format =
        (kind == LogKind.READINGS ? readings(line) : days(line))
            .withText(text(line))
            .withUnit(unit(line))
            .withMissingCodes(missingCodes(line));
    var pattern = line.optionalText("time_pattern");
    return pattern.isPresent() ? format.withTimePattern(pattern.get()) : format;
  }

  private static LogFormat readings(DelimitedLine line) {
    var columns = new LogColumns.Readings(line.text("time_column"), line.text("value_column"));
    var format = LogFormat.readings().withColumns(columns);
    var clocked = line.optionalText("zone").isPresent() ? format.withZone(zone(line)) : format;
    return line.optionalText("day_offset")
        .map(text -> clocked.withDayOffset(dayOffset(line, text)))
        .orElse(clocked);
  }

  private static LogFormat days(DelimitedLine line) {
    return LogFormat.dailyExtremes()
        .withColumns(
            new LogColumns.Extremes(
                line.text("time_column"), line.text("min_column"), line.text("max_column")));
  }

  private static DelimitedFormat text(DelimitedLine line) {
    char separator =
        switch (line.optionalChoice("separator", Separator.class).orElse(Separator.COMMA)) {
          case COMMA -> ',';
          case SEMICOLON -> ';';
          case TAB -> '\t';
        };
    var decimal = line.optionalChoice("decimal", DecimalMark.class).orElse(DecimalMark.POINT);
    return DelimitedFormat.COMMA
        .withSeparator(separator)
        .withDecimalMark(decimal == DecimalMark.COMMA ? ',' : '.');
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

  /** The words of the column {@code decimal}. */
  enum DecimalMark {
    POINT,
    COMMA
  }
}
