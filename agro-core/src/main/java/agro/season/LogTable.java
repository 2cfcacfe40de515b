package agro.season;

import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.TemperatureLog;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Reads the table of logs and the logs that it names, and joins those of one place. */
final class LogTable {
  private final Path folder;
  private final Map<String, MonitoredPlace> places;
  private final Map<String, List<TemperatureLog>> measured = new LinkedHashMap<>();
  private final Map<String, List<PlaceLog.Foreseen>> foreseen = new LinkedHashMap<>();

  private LogTable(Path folder, Map<String, MonitoredPlace> places) {
    this.folder = folder;
    this.places = places;
  }

  /** The logs by place; a place without a log is left out. */
  static Map<String, PlaceLog> read(
      Path folder, Map<String, MonitoredPlace> places, ReadReport.Collector report) {
    var table = new LogTable(folder, places);
    var named = new ArrayList<LogFile>();
    for (var line : FolderTable.lines(folder, FolderLayout.LOGS, report)) {
      report.countRow();
      named.add(table.named(line));
    }
    var read = LogFiles.read(named, Progress.ofThread());
    for (int i = 0; i < named.size(); i++) {
      table.add(named.get(i), read.get(i));
    }
    var joined = new LinkedHashMap<String, PlaceLog>();
    table.measured.forEach((place, logs) -> joined.put(place, table.join(place, logs)));
    return joined;
  }

  private LogFile named(DelimitedLine line) {
    var name = FolderTable.reference(line, "place", FolderLayout.PLACES, places.keySet());
    var place = Objects.requireNonNull(places.get(name));
    var kind = line.choice("kind", LogKind.class);
    var format = FolderTable.located(line, "time_pattern", () -> LogLine.format(line, kind));
    var madeOn =
        kind == LogKind.FORECAST_DAYS
            ? Optional.of(line.date("made_on"))
            : Optional.<LocalDate>empty();
    var file = line.text("file");
    return new LogFile(folder.resolve(file), file, format, name, place.medium(), madeOn);
  }

  private void add(LogFile file, TemperatureLog log) {
    if (file.madeOn().isPresent()) {
      foreseen
          .computeIfAbsent(file.place(), p -> new ArrayList<>())
          .add(new PlaceLog.Foreseen(file.madeOn().get(), asForecast(log.daily())));
    } else {
      measured.computeIfAbsent(file.place(), p -> new ArrayList<>()).add(log);
    }
  }

  private static DailyTemperatures asForecast(DailyTemperatures log) {
    var days = new ArrayList<DailyExtremes>();
    for (int i = 0; i < log.size(); i++) {
      log.extremes(log.day(i)).ifPresent(days::add);
    }
    return DailyTemperatures.of(log.place(), log.medium(), days, DayOrigin.FORECAST);
  }

  private PlaceLog join(String place, List<TemperatureLog> logs) {
    var ordered = new ArrayList<>(logs);
    ordered.sort(Comparator.comparing(log -> log.daily().firstDay()));
    var report = new ReadReport.Collector(place);
    Optional<DailyTemperatures> joined = Optional.empty();
    for (var log : ordered) {
      report.addAll(log.report());
      var days = log.daily();
      joined = Optional.of(joined.map(before -> continued(before, days, report)).orElse(days));
    }
    return new PlaceLog(
        joined.orElseThrow(), foreseen.getOrDefault(place, List.of()), report.report());
  }

  /** Days that stand in two logs must agree; then it does not matter which one is taken. */
  private static DailyTemperatures continued(
      DailyTemperatures before, DailyTemperatures days, ReadReport.Collector report) {
    int common = 0;
    for (int i = 0; i < days.size(); i++) {
      var day = days.day(i);
      var one = before.extremes(day);
      var other = days.extremes(day);
      if (one.isPresent() && other.isPresent()) {
        requireEqual(days.place(), one.get(), other.get());
        common++;
      }
    }
    if (common > 0) {
      report.add(
          Deed.NOTED,
          SourceLocation.NONE,
          days.place() + ": " + common + " days stand in two logs with the same values");
    }
    return before.filledFrom(days).followedBy(days);
  }

  private static void requireEqual(String place, DailyExtremes one, DailyExtremes other) {
    if (!one.equals(other)) {
      throw InputProblem.at(
              SourceLocation.file(FolderLayout.LOGS.fileName()),
              "two logs of " + place + " with different extremes on " + one.date())
          .expected("logs of a place that follow each other or agree")
          .because("it is not known which of the two holds")
          .mend(
              "take the days out of one of the logs, or give the other sensor a place of its own");
    }
  }
}
