package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.units.TemperatureUnit;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What headings and the lines before the table state about clock, unit and times. */
final class Hints {

  private final RawTable table;
  private final ReadReport.Collector report;

  Hints(RawTable table, ReadReport.Collector report) {
    this.table = table;
    this.report = report;
  }

  /** The zone that a heading of the time or a line before the table states. */
  Optional<ZoneId> zone(List<TimePartColumn> times) {
    Optional<ZoneId> found = Optional.empty();
    var from = "";
    for (var time : times) {
      ZoneNames.refuseAmbiguous(time.name(), table.file().column(time.name()));
      var zone =
          ZoneNames.in(time.name()).or(() -> ZoneNames.in(table.below(table.indexOf(time.name()))));
      if (zone.isPresent()) {
        found = zone;
        from = "the heading \"" + time.name() + "\"";
      }
    }
    for (var line : table.before()) {
      var lower = line.toLowerCase(Locale.ROOT);
      boolean aboutClock =
          lower.contains("time zone")
              || lower.contains("timezone")
              || lower.contains("time_zone")
              || lower.contains("times in")
              || lower.contains("times are")
              || lower.contains("clock");
      var zone = aboutClock ? ZoneNames.in(line) : Optional.<ZoneId>empty();
      if (zone.isPresent() && found.isPresent() && !zone.equals(found)) {
        throw InputProblem.at(table.file(), "two time zones: " + found.get() + " and " + zone.get())
            .expected("one clock for all times")
            .because("the days of the log depend on it")
            .mend("declare the clock with withZone");
      }
      if (zone.isPresent()) {
        found = zone;
        from = "the line \"" + line.strip() + "\"";
      }
    }
    if (found.isPresent()) {
      report.add(Deed.NOTED, table.file(), "the clock is " + found.get() + ", by " + from);
    }
    return found;
  }

  /** The unit that heading, line of units or a line before the table states for a column. */
  Optional<TemperatureUnit> unit(int column) {
    var heading = table.headings().get(column);
    var inHeading =
        table.form().headingLine().orElse(0) > 0
            ? UnitWords.ofHeading(heading)
            : Optional.<TemperatureUnit>empty();
    var below = table.below(column);
    var inBelow = below.isEmpty() ? Optional.<TemperatureUnit>empty() : UnitWords.ofCell(below);
    if (inHeading.isPresent() && inBelow.isPresent() && !inHeading.equals(inBelow)) {
      throw conflict(column, inHeading.get(), inBelow.get());
    }
    var stated = inHeading.or(() -> inBelow);
    return stated.isPresent() ? stated : before();
  }

  private Optional<TemperatureUnit> before() {
    Optional<TemperatureUnit> found = Optional.empty();
    for (var line : table.before()) {
      var unit = UnitWords.ofLine(line);
      if (unit.isPresent() && found.isPresent() && !unit.equals(found)) {
        return Optional.empty();
      }
      found = unit.isPresent() ? unit : found;
    }
    return found;
  }

  InputProblem conflict(int column, TemperatureUnit one, TemperatureUnit other) {
    return InputProblem.at(
            table.file().column(table.headings().get(column)),
            "two units for one column, " + one.symbol() + " and " + other.symbol())
        .expected("one unit")
        .because("a temperature in the wrong unit is a wrong temperature")
        .mend("declare the unit with withUnit");
  }

  /** What a heading or a line says about the meaning of the times. */
  Optional<ReadingTime> timing(List<TimePartColumn> times) {
    var lines = new ArrayList<>(table.before());
    times.forEach(time -> lines.add(time.name()));
    for (var line : lines) {
      var lower = line.toLowerCase(Locale.ROOT);
      if (lower.contains("ending")
          || lower.contains("end of interval")
          || lower.contains("interval end")) {
        return Optional.of(ReadingTime.INTERVAL_END);
      }
      if (lower.contains("hour beginning")
          || lower.contains("interval beginning")
          || lower.contains("start of interval")) {
        return Optional.of(ReadingTime.INTERVAL_START);
      }
    }
    return Optional.empty();
  }

  /** The hour of observation that a line before the table or a heading states. */
  Optional<LocalTime> observed() {
    var lines = new ArrayList<>(table.before());
    lines.addAll(table.headings());
    for (var line : lines) {
      var lower = line.toLowerCase(Locale.ROOT);
      if (lower.contains("observ") || lower.contains("read at") || lower.contains("reading time")) {
        var clock = clockIn(line);
        if (clock.isPresent()) {
          return clock;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<LocalTime> clockIn(String line) {
    var words = BlankCells.words(line.replace(',', ' ').replace(';', ' '));
    for (int i = 0; i < words.size(); i++) {
      var word = words.get(i);
      var withHalf = i + 1 < words.size() ? word + " " + words.get(i + 1) : word;
      for (var text : List.of(withHalf, word)) {
        boolean digits = text.length() == 4 && text.chars().allMatch(c -> c >= '0' && c <= '9');
        var clock = digits ? text.substring(0, 2) + ":" + text.substring(2) : text;
        var time = WrittenTime.of(clock).filter(WrittenTime::isClockOnly);
        if (time.isPresent() && time.get().clock() < 86_400) {
          return Optional.of(LocalTime.ofSecondOfDay(time.get().clock()));
        }
      }
    }
    return Optional.empty();
  }
}
