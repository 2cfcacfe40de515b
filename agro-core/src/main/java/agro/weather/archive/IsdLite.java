package agro.weather.archive;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.source.Bibliography;
import agro.source.Reference;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Hourly files of the Integrated Surface Data, lite: year, month, day and hour in UTC, then air
 * temperature and seven other elements in fixed columns, plain or compressed with gzip. The air
 * temperature stands in columns 14 to 19 in tenths of a degree Celsius, −9999 where there is none.
 * One hour may be missing from the file altogether.
 *
 * @param place name of the place
 * @param medium what the thermometer stood in
 * @param dayOffset standard time of the place, at whose midnight days are cut; when empty, days of
 *     UTC are taken and the report says so
 */
public record IsdLite(String place, Medium medium, Optional<ZoneOffset> dayOffset) {

  private static final int MISSING = -9999;
  private static final int TEMPERATURE_FROM = 13;
  private static final int TEMPERATURE_TO = 19;
  private static final int HOUR_SECONDS = 3600;

  /** Refuses nulls. */
  public IsdLite {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(medium, "medium");
    Objects.requireNonNull(dayOffset, "dayOffset");
  }

  /**
   * A thermometer in a shelter.
   *
   * @param place name of the place, which does not stand in the file
   * @return the usual way to read a file
   */
  public static IsdLite ofPlace(String place) {
    return new IsdLite(place, Medium.shelterAir(), Optional.empty());
  }

  /**
   * States where days are cut.
   *
   * @param standardTime standard time of the place
   * @return a new way to read
   */
  public IsdLite withDayOffset(ZoneOffset standardTime) {
    return new IsdLite(place, medium, Optional.of(standardTime));
  }

  /**
   * States what the thermometer stood in.
   *
   * @param newMedium the medium
   * @return a new way to read
   */
  public IsdLite withMedium(Medium newMedium) {
    return new IsdLite(place, newMedium, dayOffset);
  }

  /**
   * Where the layout is described.
   *
   * @return the archive's documentation
   */
  public static Reference source() {
    return Bibliography.ISD_LITE_FORMAT;
  }

  /**
   * Whether a line has the shape of this layout.
   *
   * @param firstLine first line of a file
   * @return true when {@link #read} can be expected to read the file
   */
  public static boolean matches(String firstLine) {
    if (firstLine.length() < TEMPERATURE_TO || firstLine.indexOf(',') >= 0) {
      return false;
    }
    var fields = firstLine.strip().split(" +");
    return fields.length == 12
        && fields[0].length() == 4
        && Arrays.stream(fields).allMatch(IsdLite::isWhole)
        && firstLine.charAt(4) == ' '
        && firstLine.charAt(7) == ' '
        && firstLine.substring(TEMPERATURE_FROM, TEMPERATURE_TO).strip().equals(fields[4]);
  }

  private static boolean isWhole(String field) {
    int from = field.startsWith("-") ? 1 : 0;
    return field.length() > from
        && field.length() - from <= 5
        && field.chars().skip(from).allMatch(c -> c >= '0' && c <= '9');
  }

  /**
   * Reads a file.
   *
   * @param file a file of the archive
   * @return the readings, missing hours left out, and the report
   * @throws InputProblem when the file is missing, empty or in another layout, when a line is
   *     damaged, when hours are out of order, or when no hour has a temperature
   */
  public ArchivedReadings read(Path file) {
    var name = file.getFileName().toString();
    return of(ArchiveText.lines(file, name), name);
  }

  /**
   * Reads lines.
   *
   * @param lines lines of a file of the archive
   * @param name name of the file in messages and in the report
   * @return the readings and the report
   * @throws InputProblem as for {@link #read}
   */
  public ArchivedReadings of(List<String> lines, String name) {
    var collector = new ReadReport.Collector(name);
    var seconds = new long[lines.size()];
    var celsius = new double[lines.size()];
    int known = 0;
    int missing = 0;
    long firstMissing = 0;
    long last = Long.MIN_VALUE;
    for (int i = 0; i < lines.size(); i++) {
      var line = lines.get(i);
      if (line.isBlank()) {
        continue;
      }
      collector.countRow();
      var where = SourceLocation.line(name, i + 1L);
      long second = second(line, where);
      requireLater(second, last, where);
      last = second;
      int tenths = Integer.parseInt(line.substring(TEMPERATURE_FROM, TEMPERATURE_TO).strip());
      if (tenths == MISSING) {
        firstMissing = missing++ == 0 ? i + 1L : firstMissing;
        continue;
      }
      seconds[known] = second;
      celsius[known++] = tenths / 10.0;
    }
    requireAny(known, name);
    tell(collector, name, missing, firstMissing);
    var readings =
        TemperatureReadings.of(
            place,
            medium,
            dayOffset.orElse(ZoneOffset.UTC),
            Arrays.copyOf(seconds, known),
            Arrays.copyOf(celsius, known));
    return new ArchivedReadings(readings, collector.report());
  }

  private static long second(String line, SourceLocation where) {
    if (!matches(line)) {
      throw InputProblem.at(where, "\"" + GhcnFixedWidth.shortened(line) + "\"")
          .expected("year, month, day, hour and eight whole numbers in fixed columns")
          .because("the columns decide which number is the temperature")
          .mend("fetch the file again, or read other logs with TemperatureLog");
    }
    var fields = line.strip().split(" +");
    var day =
        GhcnLine.dayOrNull(
            Integer.parseInt(fields[0]), Integer.parseInt(fields[1]), Integer.parseInt(fields[2]));
    int hour = Integer.parseInt(fields[3]);
    if (day == null || hour < 0 || hour > 23) {
      throw InputProblem.at(where, String.join(" ", List.of(fields).subList(0, 4)))
          .expected("a day of the calendar and an hour from 0 to 23")
          .because("the reading cannot be placed")
          .mend("fetch the file again");
    }
    return day.toEpochSecond(LocalTime.MIDNIGHT, ZoneOffset.UTC) + (long) hour * HOUR_SECONDS;
  }

  private static void requireLater(long second, long last, SourceLocation where) {
    if (second <= last) {
      throw InputProblem.at(where, second == last ? "an hour twice" : "an earlier hour")
          .expected("hours in ascending order, each once")
          .because("two files may have been put together, or a line is damaged")
          .mend("put the files of the years in order, each once");
    }
  }

  private static void requireAny(int known, String name) {
    if (known == 0) {
      throw InputProblem.at(SourceLocation.file(name), "no hour with a temperature")
          .expected("hours with an air temperature in columns 14 to 19")
          .because("nothing can be worked out from it")
          .mend("choose another year or another station");
    }
  }

  private void tell(ReadReport.Collector collector, String name, int missing, long firstMissing) {
    if (missing > 0) {
      collector.add(
          Deed.NOTED,
          SourceLocation.line(name, firstMissing),
          missing
              + (missing == 1 ? " hour" : " hours")
              + " without temperature, the first one here");
    }
    if (dayOffset.isEmpty()) {
      collector.add(
          Deed.ASSUMED,
          SourceLocation.file(name),
          "days run from midnight to midnight of UTC, for the place's standard time is not stated");
    }
  }
}
