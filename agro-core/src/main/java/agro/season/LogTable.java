package agro.season;

import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Reads the table of logs and the logs that it names, and joins those of one place. */
final class LogTable {
  private static final String ERRORS = "errors_c";

  private final Path folder;
  private final Map<String, MonitoredPlace> places;
  private final Map<String, List<MeasuredLog>> measured = new LinkedHashMap<>();
  private final Map<String, List<PlaceLog.Foreseen>> foreseen = new LinkedHashMap<>();

  private LogTable(Path folder, Map<String, MonitoredPlace> places) {
    this.folder = folder;
    this.places = places;
  }

  /**
   * The logs by place, and what is wrong with places of which a log is bad.
   *
   * @param sound places whose logs could all be read; a place without a log is left out
   * @param bad the first problem of each other place
   */
  record Logs(Map<String, PlaceLog> sound, Map<String, InputProblem> bad) {}

  /** The logs by place; of several bad logs the first one is told. */
  static Map<String, PlaceLog> read(
      Path folder,
      Map<String, MonitoredPlace> places,
      KnownDays known,
      ReadReport.Collector report) {
    var logs = readEach(folder, places, known, report);
    var first = logs.bad().values().stream().findFirst();
    if (first.isPresent()) {
      throw first.get();
    }
    return logs.sound();
  }

  /** The logs by place, bad ones apart. */
  static Logs readEach(
      Path folder,
      Map<String, MonitoredPlace> places,
      KnownDays known,
      ReadReport.Collector report) {
    var table = new LogTable(folder, places);
    var named = new ArrayList<LogFile>();
    for (var line : FolderTable.lines(folder, FolderLayout.LOGS, report)) {
      report.countRow();
      named.add(table.named(line));
    }
    named.removeIf(file -> file.madeOn().filter(day -> day.isAfter(known.last())).isPresent());
    var bad = new LinkedHashMap<String, InputProblem>();
    LogFiles.read(
            named,
            known,
            Progress.ofThread(),
            (file, problem) -> bad.putIfAbsent(file.place(), problem))
        .forEach(log -> log.ifPresent(table::add));
    table.measured.keySet().removeAll(bad.keySet());
    var joined = new LinkedHashMap<String, PlaceLog>();
    table.measured.forEach(
        (place, logs) -> {
          try {
            var foreseen = table.foreseen.getOrDefault(place, List.of());
            joined.put(place, PlaceLog.join(place, logs, foreseen));
          } catch (InputProblem problem) {
            bad.put(place, problem);
          }
        });
    return new Logs(joined, bad);
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
    var errors = madeOn.isPresent() ? errors(line) : List.<Double>of();
    return new LogFile(folder.resolve(file), file, format, name, place.medium(), madeOn, errors);
  }

  private static List<Double> errors(DelimitedLine line) {
    var text = line.optionalText(ERRORS).orElse("").strip();
    var errors = new ArrayList<Double>();
    for (var word : text.isEmpty() ? new String[0] : text.split("\\s+")) {
      if (!word.matches("\\d{1,2}(\\.\\d+)?")) {
        throw InputProblem.at(line.location(ERRORS), "the cell reads \"" + text + "\"")
            .expected("standard errors in °C, each 0 or more, apart by spaces, such as 1.0 1.5 2.1")
            .because("the error of a forecast day is looked up by the days since it was made")
            .mend("write numbers with a decimal point, or leave the cell empty");
      }
      errors.add(Double.valueOf(word));
    }
    return errors;
  }

  private void add(MeasuredLog read) {
    var file = read.file();
    if (file.madeOn().isPresent()) {
      foreseen
          .computeIfAbsent(file.place(), p -> new ArrayList<>())
          .add(new PlaceLog.Foreseen(file.madeOn().get(), asForecast(read)));
    } else {
      measured.computeIfAbsent(file.place(), p -> new ArrayList<>()).add(read);
    }
  }

  private static DailyTemperatures asForecast(MeasuredLog read) {
    var log = read.log().daily();
    var errors = read.file().errorsByLead();
    var madeOn = read.file().madeOn().orElseThrow();
    var foreseen = DailyTemperatures.builder(log.firstDay(), log.lastDay());
    for (int i = 0; i < log.size(); i++) {
      var day = log.day(i);
      var lead = Math.max(0, (int) ChronoUnit.DAYS.between(madeOn, day));
      var error = errors.isEmpty() ? 0 : errors.get(Math.min(lead, errors.size() - 1));
      log.extremes(day)
          .ifPresent(
              extremes ->
                  foreseen.put(
                      day,
                      extremes.minCelsius(),
                      extremes.maxCelsius(),
                      error,
                      error,
                      DayOrigin.FORECAST));
    }
    return foreseen.build(log.place(), log.medium());
  }
}
