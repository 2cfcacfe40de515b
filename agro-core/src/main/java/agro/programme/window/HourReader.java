package agro.programme.window;

import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** Reads weather by the hour from declared columns; lines of parts of an hour are put together. */
final class HourReader {

  private static final long HOUR = 3600;

  private final HourColumns columns;
  private final ZoneId clock;
  private final DelimitedText table;
  private final ReadReport.Collector report;
  private final Set<WeatherKind> kinds = EnumSet.noneOf(WeatherKind.class);

  /** One line with its moment. */
  private record Reading(Instant start, Map<WeatherKind, Double> values) {}

  private HourReader(HourColumns columns, ZoneId fieldClock, DelimitedText table) {
    this.columns = columns;
    this.table = table;
    clock = columns.zone().orElse(fieldClock);
    report = new ReadReport.Collector(table.name());
  }

  static HourlyWeather read(Path file, HourColumns columns, ZoneId fieldClock) {
    var table = DelimitedText.read(file, columns.format(), List.of(columns.time()));
    return new HourReader(columns, fieldClock, table.requireRows()).hours();
  }

  static HourlyWeather parse(String name, String text, HourColumns columns, ZoneId fieldClock) {
    var table = DelimitedText.parse(name, text, columns.format(), List.of(columns.time()));
    return new HourReader(columns, fieldClock, table.requireRows()).hours();
  }

  private HourlyWeather hours() {
    for (var kind : WeatherKind.values()) {
      var column = columns.columns().get(kind);
      if (column != null && table.hasColumn(column)) {
        kinds.add(kind);
      } else {
        note(kind.words() + " is not in the file" + (column == null ? "" : " (" + column + ")"));
      }
    }
    if (kinds.isEmpty()) {
      throw InputProblem.at(table.location(), "none of the columns of weather is in the file")
          .expected("at least one of " + columns.columns().values())
          .because("there is nothing to hold the limits against")
          .mend("declare the names of the columns; the file has " + table.columns());
    }
    var readings = readings();
    var groups = new TreeMap<Instant, List<Reading>>();
    for (var reading : readings) {
      groups.computeIfAbsent(hourOf(reading.start()), start -> new ArrayList<>()).add(reading);
    }
    long step = step(readings);
    var hours = new ArrayList<WeatherHour>();
    groups.forEach((start, lines) -> hours.add(hour(start, lines, step)));
    return new HourlyWeather(table.name(), hours, kinds, report.report());
  }

  private void note(String text) {
    report.add(Deed.NOTED, SourceLocation.NONE, text);
  }

  /** Hours begin with those of the field's clock, also where it is half an hour off. */
  private Instant hourOf(Instant moment) {
    var offset = clock.getRules().getOffset(moment).getTotalSeconds();
    long local = moment.getEpochSecond() + offset;
    return Instant.ofEpochSecond(Math.floorDiv(local, HOUR) * HOUR - offset);
  }

  private List<Reading> readings() {
    var readings = new ArrayList<Reading>();
    Instant before = null;
    for (var line : table.lines()) {
      report.countRow();
      var written = instant(line, before);
      if (before != null && !written.isAfter(before)) {
        throw InputProblem.at(
                line.location(columns.time()), "the time \"" + line.text(columns.time()) + "\"")
            .expected("a time after that of the line before")
            .because("rain is added up over the lines in order")
            .mend("sort the lines, leave out the double ones, or declare the clock of the file");
      }
      before = written;
      readings.add(new Reading(written.minus(columns.lag()), values(line)));
    }
    return readings;
  }

  private Map<WeatherKind, Double> values(DelimitedLine line) {
    var values = new EnumMap<WeatherKind, Double>(WeatherKind.class);
    for (var kind : kinds) {
      var value = value(line, columns.columns().get(kind));
      if (value.isPresent()) {
        values.put(kind, checked(line, kind, value.getAsDouble()));
      }
    }
    return values;
  }

  private OptionalDouble value(DelimitedLine line, String column) {
    var text = line.optionalText(column);
    return text.isEmpty() || text.equals(columns.missing())
        ? OptionalDouble.empty()
        : line.optionalNumber(column);
  }

  private double checked(DelimitedLine line, WeatherKind kind, double written) {
    var column = line.location(columns.columns().get(kind));
    double least = kind == WeatherKind.TEMPERATURE ? -90 : 0;
    double most =
        switch (kind) {
          case HUMIDITY -> 105;
          case TEMPERATURE -> 60;
          case WIND, GUST -> 120;
          case RAIN -> 400;
        };
    boolean holds = written >= 0 || kind == WeatherKind.TEMPERATURE;
    double value = holds ? columns.scaled(kind, written) : written;
    if (!(value >= least && value <= most)) {
      throw InputProblem.at(column, "the cell reads " + written + ", " + kind.words())
          .expected(least + " to " + most + " " + HourColumns.unit(kind))
          .because("no weather of that kind is known on earth")
          .mend("declare the unit of the column, or the word for a missing value");
    }
    return value;
  }

  private Instant instant(DelimitedLine line, Instant before) {
    var text = line.text(columns.time());
    try {
      if (columns.pattern().isPresent()) {
        var pattern = DateTimeFormatter.ofPattern(columns.pattern().get(), Locale.ROOT);
        return onClock(line, LocalDateTime.parse(text, pattern), before);
      }
      var iso = text.replace(' ', 'T');
      return iso.matches(".*T.*([Zz]|[+-][0-9:]+)")
          ? OffsetDateTime.parse(iso).toInstant()
          : onClock(line, LocalDateTime.parse(iso), before);
    } catch (DateTimeException e) {
      throw InputProblem.at(line.location(columns.time()), "the cell reads \"" + text + "\"")
          .expected(
              "a time as "
                  + columns.pattern().orElse("2031-05-01T06:00, with or without an offset"))
          .because("each hour is judged by its own weather")
          .mend("declare the pattern of the times");
    }
  }

  /** Hours that come twice are taken in the order of the lines; those that do not come fail. */
  private Instant onClock(DelimitedLine line, LocalDateTime time, Instant before) {
    var offsets = clock.getRules().getValidOffsets(time);
    if (offsets.isEmpty()) {
      throw InputProblem.at(
              line.location(columns.time()), "the clock of " + clock + " has no " + time)
          .expected("a time that the clock shows")
          .because("the clock is put forward over that hour")
          .mend("declare the clock of the file; loggers often stay on one offset all the year");
    }
    var first = time.toInstant(offsets.get(0));
    boolean second = offsets.size() > 1 && before != null && !first.isAfter(before);
    return second ? time.toInstant(offsets.get(1)) : first;
  }

  /** Usual seconds between two lines. */
  private static long step(List<Reading> readings) {
    var counts = new TreeMap<Long, Integer>();
    for (int i = 1; i < readings.size(); i++) {
      long seconds =
          ChronoUnit.SECONDS.between(readings.get(i - 1).start(), readings.get(i).start());
      counts.merge(seconds, 1, Integer::sum);
    }
    return counts.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(HOUR);
  }

  private WeatherHour hour(Instant start, List<Reading> lines, long step) {
    var values = new EnumMap<WeatherKind, WeatherHour.Span>(WeatherKind.class);
    for (var kind : kinds) {
      var read = lines.stream().filter(line -> line.values().containsKey(kind)).toList();
      var numbers = read.stream().mapToDouble(line -> line.values().get(kind)).summaryStatistics();
      boolean filled = read.size() * Math.min(step, Duration.ofHours(1).toSeconds()) >= HOUR;
      if (kind == WeatherKind.RAIN && filled) {
        values.put(kind, new WeatherHour.Span(numbers.getSum(), numbers.getSum()));
      } else if (kind != WeatherKind.RAIN && !read.isEmpty()) {
        values.put(kind, new WeatherHour.Span(numbers.getMin(), numbers.getMax()));
      }
    }
    return new WeatherHour(start, values);
  }
}
