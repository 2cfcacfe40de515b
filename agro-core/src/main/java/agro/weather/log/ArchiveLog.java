package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.TemperatureUnit;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.DayRuns;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import agro.weather.archive.GhcnDaily;
import agro.weather.archive.IsdLite;
import agro.weather.log.ExtremesReadAt.MaximumDay;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Predicate;

/**
 * Reads the files of the archives, whose layouts say by themselves what other logs have to be asked
 * for: columns, unit, clock and missing code. They are known by the shape of their first line.
 */
final class ArchiveLog {

  private static final int LONGEST_FIRST_LINE = 1000;

  /** Just beyond the records of the world, -89.2 and 56.7 °C. */
  private static final double LOWEST_CELSIUS = -90;

  private static final double HIGHEST_CELSIUS = 60;

  private final List<String> lines;
  private final String name;
  private final LogFormat format;
  private final String place;
  private final Medium medium;
  private final Predicate<LocalDate> known;
  private final ReadReport.Collector report;

  private ArchiveLog(
      FileBytes bytes,
      String name,
      LogFormat format,
      String place,
      Medium medium,
      Predicate<LocalDate> known) {
    this.lines = lines(bytes);
    this.name = name;
    this.format = format;
    this.place = place;
    this.medium = medium;
    this.known = known;
    report = new ReadReport.Collector(name);
    if (bytes.packed()) {
      report.add(Deed.NOTED, SourceLocation.file(name), "the file is packed with gzip");
    }
  }

  /** The log, or nothing when the file is in none of the archives' layouts. */
  static Optional<TemperatureLog> read(
      FileBytes bytes,
      String name,
      LogFormat format,
      String place,
      Medium medium,
      Predicate<LocalDate> known) {
    var first = firstLine(bytes);
    if (!isOpen(format) || !(GhcnDaily.matches(first) || IsdLite.matches(first))) {
      return Optional.empty();
    }
    var log = new ArchiveLog(bytes, name, format, place, medium, known);
    log.requireCelsius();
    return Optional.of(IsdLite.matches(first) ? log.hourly() : log.daily());
  }

  /** The logs of all stations of a file, or nothing when it is in none of the layouts. */
  static Optional<Map<String, TemperatureLog>> readAll(
      FileBytes bytes, String name, LogFormat format, String place, Medium medium) {
    boolean isDaily = isOpen(format) && GhcnDaily.matches(firstLine(bytes));
    var stations = isDaily ? GhcnDaily.stations(lines(bytes), name) : List.<String>of();
    if (stations.size() < 2 || format.sensor().isPresent()) {
      return read(bytes, name, format, place, medium, TemperatureLog.EVERY_DAY)
          .map(log -> Map.of(stations.size() == 1 ? stations.get(0) : name, log));
    }
    var logs = new LinkedHashMap<String, TemperatureLog>();
    for (var station : stations) {
      var one = format.withSensor(station);
      var own = place + ", " + station;
      read(bytes, name, one, own, medium, TemperatureLog.EVERY_DAY)
          .ifPresent(log -> logs.put(station, log));
    }
    return Optional.of(logs);
  }

  /** Whether nothing is declared that only a table of columns has. */
  private static boolean isOpen(LogFormat format) {
    return format.columns().isEmpty()
        && format.table().separator().isEmpty()
        && format.times().pattern().isEmpty();
  }

  /** The first line that is neither blank nor a remark. */
  private static String firstLine(FileBytes bytes) {
    var all = bytes.bytes();
    int from = 0;
    while (from < all.length) {
      int to = from;
      while (to < all.length && all[to] != '\n' && to - from < LONGEST_FIRST_LINE) {
        to++;
      }
      var line = new String(all, from, to - from, StandardCharsets.UTF_8).stripTrailing();
      if (!line.isBlank() && !isRemark(line)) {
        return line;
      }
      from = to + 1;
    }
    return "";
  }

  private static boolean isRemark(String line) {
    return line.startsWith("#");
  }

  /** The lines, remarks above the data emptied so that the others keep their numbers. */
  private static List<String> lines(FileBytes bytes) {
    var lines = new ArrayList<>(new String(bytes.bytes(), StandardCharsets.UTF_8).lines().toList());
    for (int i = 0; i < lines.size() && (lines.get(i).isBlank() || isRemark(lines.get(i))); i++) {
      lines.set(i, "");
    }
    return lines;
  }

  private void requireCelsius() {
    var unit = format.unit();
    if (unit.isPresent() && unit.get() != TemperatureUnit.CELSIUS) {
      throw InputProblem.at(
              SourceLocation.file(name), "a file of an archive, declared to be in " + unit.get())
          .expected("tenths of a degree Celsius, which is what this layout holds")
          .because("the temperatures would be changed twice")
          .mend("leave the unit out; if the file was changed by hand, declare its columns too");
    }
  }

  private TemperatureLog daily() {
    var stations = GhcnDaily.stations(lines, name);
    if (stations.size() > 1 && format.sensor().isEmpty()) {
      throw InputProblem.at(
              SourceLocation.file(name),
              stations.size() + " stations: " + String.join(", ", stations))
          .expected("one of them")
          .because("temperatures of two places make no series")
          .mend(
              "choose one: LogFormat.detect().withSensor(\""
                  + stations.get(0)
                  + "\"), or take them all with TemperatureLog.readAll");
    }
    var archive = GhcnDaily.withDefaults().withPlace(place).withMedium(medium);
    var days = format.sensor().map(archive::withStation).orElse(archive).of(lines, name);
    tell("daily extremes in the layout of " + GhcnDaily.source().citation(), days.report());
    var plausible = moved(plausible(known(days.daily())));
    tellMissing(plausible);
    return new TemperatureLog(plausible, Optional.empty(), format, report.report());
  }

  private DailyTemperatures known(DailyTemperatures all) {
    if (known == TemperatureLog.EVERY_DAY) {
      return all;
    }
    var days =
        all.firstDay()
            .datesUntil(all.lastDay().plusDays(1))
            .filter(known)
            .flatMap(day -> all.extremes(day).stream())
            .toList();
    requireAny(days.size());
    return DailyTemperatures.of(place, medium, days, DayOrigin.OBSERVED);
  }

  /** The days that weather can have had; the others are missing and told. */
  private DailyTemperatures plausible(DailyTemperatures all) {
    var dropped = new ArrayList<LocalDate>();
    var kept = new ArrayList<DailyExtremes>();
    for (int i = 0; i < all.size(); i++) {
      all.extremes(all.day(i))
          .ifPresent(
              day -> {
                if (canBe(day.minCelsius(), day.maxCelsius())) {
                  kept.add(day);
                } else {
                  dropped.add(day.date());
                }
              });
    }
    tellImplausible(dropped, "day");
    requireAny(kept.size());
    return dropped.isEmpty() ? all : DailyTemperatures.of(place, medium, kept, DayOrigin.OBSERVED);
  }

  /** The maxima given to the day before, where it is declared that they belong there. */
  private DailyTemperatures moved(DailyTemperatures all) {
    var observation = format.times().observation();
    if (observation.isEmpty() || observation.get().maximum() == MaximumDay.AS_WRITTEN) {
      return all;
    }
    var kept = new ArrayList<DailyExtremes>();
    int crossed = 0;
    for (int i = 0; i + 1 < all.size(); i++) {
      double min = all.minCelsius(all.day(i));
      double max = all.maxCelsius(all.day(i + 1));
      if (min <= max) {
        kept.add(new DailyExtremes(all.day(i), min, max));
      } else if (min > max) {
        crossed++;
      }
    }
    report.add(
        Deed.NOTED,
        SourceLocation.file(name),
        "read off at "
            + observation.get().time()
            + ": each maximum is given to the day before its date, as declared"
            + (crossed == 0
                ? ""
                : "; " + crossed + " days whose minimum is then above their maximum are missing"));
    requireAny(kept.size());
    return DailyTemperatures.of(place, medium, kept, DayOrigin.OBSERVED);
  }

  private static boolean canBe(double minCelsius, double maxCelsius) {
    return minCelsius >= LOWEST_CELSIUS && maxCelsius <= HIGHEST_CELSIUS;
  }

  private void tellImplausible(List<LocalDate> days, String what) {
    if (!days.isEmpty()) {
      report.add(
          Deed.DROPPED,
          SourceLocation.file(name),
          days.size()
              + (days.size() == 1 ? " " + what : " " + what + "s")
              + " beyond -90 to 60 °C, which no thermometer in the open has shown; the first on "
              + days.get(0));
    }
  }

  private void tellMissing(DailyTemperatures days) {
    var runs = DayRuns.of(days.missingDays());
    var longest = runs.stream().max(Comparator.comparingLong(DayRuns.Run::days));
    longest.ifPresent(
        run ->
            report.add(
                Deed.NOTED,
                SourceLocation.file(name),
                days.missingDays().size()
                    + " of "
                    + days.size()
                    + " days without both extremes, left as missing; the longest run is "
                    + run.words()));
  }

  private void requireAny(int size) {
    if (size == 0) {
      throw InputProblem.at(SourceLocation.file(name), "no value of the days that are asked for")
          .expected("at least one day with temperatures that can be")
          .because("there is nothing to compute from")
          .mend("ask as of a later day, or fetch the file of another year or station");
    }
  }

  private TemperatureLog hourly() {
    var archive = IsdLite.ofPlace(place).withMedium(medium);
    requireUtc();
    requireInstants();
    var offset = format.times().dayOffset();
    var hours = offset.map(archive::withDayOffset).orElse(archive).of(lines, name);
    tell("hourly readings in the layout of " + IsdLite.source().citation(), hours.report());
    var readings = plausible(known(hours.readings()));
    requireAny(readings.size());
    var step = format.times().step().orElse(Duration.ofSeconds(readings.medianStepSeconds()));
    var days = AssembledDays.of(readings, step, format.completeness(), name);
    report.addAll(days.report());
    return new TemperatureLog(
        days.daily(),
        Optional.of(readings),
        format.withDayOffset(readings.dayOffset()),
        report.report());
  }

  private TemperatureReadings known(TemperatureReadings all) {
    return known == TemperatureLog.EVERY_DAY ? all : only(all, i -> known.test(all.day(i)));
  }

  private TemperatureReadings plausible(TemperatureReadings all) {
    var dropped = new ArrayList<LocalDate>();
    var kept =
        only(
            all,
            i -> {
              boolean can = canBe(all.celsius(i), all.celsius(i));
              if (!can) {
                dropped.add(all.day(i));
              }
              return can;
            });
    tellImplausible(dropped, "hour");
    return kept;
  }

  private TemperatureReadings only(TemperatureReadings all, IntPredicate keeps) {
    var seconds = all.epochSeconds();
    var celsius = all.celsius();
    int count = 0;
    for (int i = 0; i < all.size(); i++) {
      if (keeps.test(i)) {
        seconds[count] = seconds[i];
        celsius[count++] = celsius[i];
      }
    }
    return TemperatureReadings.of(
        place,
        medium,
        all.dayOffset(),
        Arrays.copyOf(seconds, count),
        Arrays.copyOf(celsius, count));
  }

  private void requireUtc() {
    var zone = format.times().zone();
    if (zone.isPresent() && !isUtc(zone.get())) {
      throw InputProblem.at(
              SourceLocation.file(name),
              "an hourly file of an archive, with the clock " + zone.get())
          .expected("hours in UTC, which is what this layout holds")
          .because("the readings would be moved twice")
          .mend(
              "leave the zone out, and declare with withDayOffset the standard time at whose"
                  + " midnight the days are cut");
    }
  }

  private void requireInstants() {
    var timing = format.times().timing();
    if (timing.isPresent() && timing.get() != ReadingTime.INSTANT) {
      throw InputProblem.at(
              SourceLocation.file(name),
              "an hourly file of an archive, whose times are declared to be "
                  + timing.get().words())
          .expected("moments of readings, which is what this layout holds")
          .because("the hour of midnight would be given to another day")
          .mend("leave the meaning of the times out");
    }
  }

  private static boolean isUtc(ZoneId zone) {
    return zone.getRules().isFixedOffset()
        && zone.getRules().getOffset(Instant.EPOCH).equals(ZoneOffset.UTC);
  }

  private void tell(String layout, ReadReport read) {
    report.add(Deed.NOTED, SourceLocation.file(name), layout);
    report.addAll(read);
  }
}
