package agro.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** Copies of the demonstration folder in which every datum of some days reads something else. */
final class SpoiltLater {

  static final Path DEMO =
      Path.of(System.getProperty("basedir", ".")).resolve("../demo-data/osmere-vale");

  /** A line of an hourly log: day, hour on a civil clock, the rest of the time, the reading. */
  private static final Pattern READING =
      Pattern.compile("(\\d{4}-\\d{2}-\\d{2})[ T](\\d{2})(:\\d{2}Z?),.*");

  private static final Pattern EXTREMES = Pattern.compile("(\\d{4}-\\d{2}-\\d{2}),.*");
  private static final Pattern VISIT =
      Pattern.compile("(\\w+),(\\d{4}-\\d{2}-\\d{2}),(working|full),\\d+,(.*)");

  private SpoiltLater() {}

  /**
   * Copies the folder. Temperatures of the days become the text given, counts of visits on them the
   * count given, of the place, of its neighbour and of all others.
   */
  static Path write(Path target, Predicate<LocalDate> spoilt, String temperature, String count) {
    try (var files = Files.walk(DEMO)) {
      for (var file : files.filter(Files::isRegularFile).toList()) {
        var copy = target.resolve(DEMO.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        var text = new StringBuilder();
        for (var line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
          text.append(spoil(line, spoilt, temperature, count)).append('\n');
        }
        Files.writeString(copy, text, StandardCharsets.UTF_8);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return target;
  }

  private static String spoil(
      String line, Predicate<LocalDate> spoilt, String temperature, String count) {
    var reading = READING.matcher(line);
    if (reading.matches()) {
      // The first hour of a summer's civil day is the last one of the standard day before.
      var day = LocalDate.parse(reading.group(1));
      day = reading.group(2).equals("00") ? day.minusDays(1) : day;
      return spoilt.test(day) ? line.substring(0, line.indexOf(',') + 1) + temperature : line;
    }
    var extremes = EXTREMES.matcher(line);
    if (extremes.matches()) {
      return spoilt.test(LocalDate.parse(extremes.group(1)))
          ? extremes.group(1) + "," + temperature + "," + temperature
          : line;
    }
    var visit = VISIT.matcher(line);
    if (visit.matches() && spoilt.test(LocalDate.parse(visit.group(2)))) {
      return visit.group(1) + "," + visit.group(2) + ",working," + count + "," + visit.group(4);
    }
    return line;
  }
}
