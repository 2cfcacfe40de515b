package agro.programme.bulletin;

import agro.programme.FarmField;
import agro.programme.window.HourColumns;
import agro.programme.window.HourLimit;
import agro.programme.window.HourlyWeather;
import agro.programme.window.SprayHours;
import agro.programme.window.SprayLimits;
import agro.programme.window.WeatherKind;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.TextFile;
import agro.report.InputProblem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Weather by the hour and the user's own limits for spraying, from {@code spray-weather.csv}
 * (columns {@code time}, {@code wind_m_s}, {@code gust_m_s}, {@code rain_mm}, {@code air_c}, {@code
 * humidity_percent}) and {@code spray-limits.csv} (one line; the columns that are filled in are the
 * limits). No limit has a value of its own.
 */
record SprayHoursTable(Path weather, SprayLimits limits) {

  static final String WEATHER = "spray-weather.csv";
  static final String LIMITS = "spray-limits.csv";

  static Optional<SprayHoursTable> read(Path folder) {
    var limits = folder.resolve(LIMITS);
    var weather = folder.resolve(WEATHER);
    if (!Files.exists(limits) || !Files.exists(weather)) {
      return Optional.empty();
    }
    var text = TextFile.read(limits, LIMITS, StandardCharsets.UTF_8);
    return Optional.of(new SprayHoursTable(weather, parse(LIMITS, text)));
  }

  static SprayLimits parse(String name, String text) {
    var table = DelimitedText.parse(name, text, DelimitedFormat.COMMA, List.of());
    if (table.lines().size() != 1) {
      throw InputProblem.at(table.location(), table.lines().size() + " lines of limits")
          .expected("one line, in which a filled cell is a limit")
          .because("it is unknown which of several limits holds")
          .mend("leave one line");
    }
    var line = table.lines().get(0);
    var limits = SprayLimits.none();
    limits = within(limits, line, WeatherKind.WIND, "wind_least_m_s", "wind_most_m_s");
    limits = within(limits, line, WeatherKind.GUST, "gust_least_m_s", "gust_most_m_s");
    limits = within(limits, line, WeatherKind.TEMPERATURE, "air_least_c", "air_most_c");
    limits =
        within(
            limits, line, WeatherKind.HUMIDITY, "humidity_least_percent", "humidity_most_percent");
    if (line.optionalWholeNumber("dry_hours_before").isPresent()) {
      limits = limits.and(new HourLimit.RainBefore(line.wholeNumber("dry_hours_before"), 0));
    }
    if (line.optionalWholeNumber("dry_hours_after").isPresent()) {
      limits = limits.and(new HourLimit.RainAfter(line.wholeNumber("dry_hours_after"), 0));
    }
    return still(limits, line);
  }

  private static SprayLimits within(
      SprayLimits limits, DelimitedLine line, WeatherKind kind, String least, String most) {
    OptionalDouble from = line.optionalNumber(least);
    OptionalDouble to = line.optionalNumber(most);
    return from.isEmpty() && to.isEmpty()
        ? limits
        : limits.and(new HourLimit.Within(kind, from, to));
  }

  /** Still air around the night, in which drops float; all three cells or none. */
  private static SprayLimits still(SprayLimits limits, DelimitedLine line) {
    var wind = line.optionalNumber("inversion_wind_m_s");
    if (wind.isEmpty()) {
      return limits;
    }
    return limits.and(
        new HourLimit.InversionRisk(
            wind.getAsDouble(),
            Duration.ofMinutes(line.wholeNumber("inversion_minutes_before_sunset")),
            Duration.ofMinutes(line.wholeNumber("inversion_minutes_after_sunrise"))));
  }

  /** The hours of a field on the days of a page. */
  SprayHours of(FarmField field, LocalDate first, LocalDate last) {
    var read = HourlyWeather.read(weather, HourColumns.withDefaults(), field.zone());
    var all = SprayHours.of(read, field, limits);
    return new SprayHours(
        field,
        read,
        limits,
        all.days().stream()
            .filter(day -> !day.day().isBefore(first) && !day.day().isAfter(last))
            .toList(),
        all.notJudged());
  }
}
