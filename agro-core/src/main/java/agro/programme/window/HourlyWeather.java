package agro.programme.window;

import agro.report.InputProblem;
import agro.report.ReadReport;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Weather by the hour, from a log or a forecast.
 *
 * @param name name of the file
 * @param hours the hours in order; hours without a line are left out
 * @param kinds kinds of which the file has a column
 * @param report what was missing or assumed
 */
public record HourlyWeather(
    String name, List<WeatherHour> hours, Set<WeatherKind> kinds, ReadReport report) {

  /** Copies the hours and refuses them out of order. */
  public HourlyWeather {
    hours = List.copyOf(hours);
    kinds = Set.copyOf(kinds);
    for (int i = 1; i < hours.size(); i++) {
      var before = hours.get(i - 1).start();
      if (Duration.between(before, hours.get(i).start()).toMinutes() < 60) {
        throw InputProblem.of("an hour from " + before + " and one from " + hours.get(i).start())
            .expected("hours in order that do not overlap")
            .because("rain is added up over hours")
            .mend("sort them, and leave out the double ones");
      }
    }
  }

  /**
   * Reads a file.
   *
   * @param file the file
   * @param columns how it is written
   * @param fieldClock clock of the field, for times without an offset and without a clock of their
   *     own
   * @return the hours
   * @throws InputProblem when the file cannot be read as declared, or has none of the columns
   */
  public static HourlyWeather read(Path file, HourColumns columns, ZoneId fieldClock) {
    return HourReader.read(file, columns, fieldClock);
  }

  /**
   * Reads text that is in memory.
   *
   * @param name name of the text in messages
   * @param text content of the file
   * @param columns how it is written
   * @param fieldClock clock of the field
   * @return the hours
   * @throws InputProblem as for {@link #read}
   */
  public static HourlyWeather parse(
      String name, String text, HourColumns columns, ZoneId fieldClock) {
    return HourReader.parse(name, text, columns, fieldClock);
  }

  /** The hours by their beginning. */
  NavigableMap<Instant, WeatherHour> byStart() {
    var map = new TreeMap<Instant, WeatherHour>();
    hours.forEach(hour -> map.put(hour.start(), hour));
    return map;
  }

  /**
   * The first hour.
   *
   * @return nothing when there is none
   */
  public Optional<WeatherHour> first() {
    return hours.isEmpty() ? Optional.empty() : Optional.of(hours.get(0));
  }

  @Override
  public String toString() {
    return name + ": " + hours.size() + " hours with " + kinds;
  }
}
