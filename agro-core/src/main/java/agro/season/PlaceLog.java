package agro.season;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** All that the logs of one place tell. */
record PlaceLog(
    DailyTemperatures days, List<MeasuredLog> logs, List<Foreseen> forecasts, ReadReport report) {

  /** Forecast days and the day on which they were made. */
  record Foreseen(LocalDate madeOn, DailyTemperatures days) {}

  /** The logs as far as they were known; nothing without a known day. */
  Optional<PlaceLog> known(KnownDays known) {
    var cut = logs.stream().flatMap(log -> log.known(known).stream()).toList();
    if (cut.isEmpty() || cut.equals(logs)) {
      return cut.isEmpty() ? Optional.empty() : Optional.of(this);
    }
    return Optional.of(join(days.place(), cut, forecasts));
  }

  /** The measured logs of a place in one run of days. */
  static PlaceLog join(String place, List<MeasuredLog> logs, List<Foreseen> forecasts) {
    var ordered = new ArrayList<>(logs);
    ordered.sort(Comparator.comparing(log -> log.log().daily().firstDay()));
    var report = new ReadReport.Collector(place);
    Optional<DailyTemperatures> joined = Optional.empty();
    for (var log : ordered) {
      report.addAll(log.log().report());
      var days = log.log().daily();
      joined = Optional.of(joined.map(before -> continued(before, days, report)).orElse(days));
    }
    return new PlaceLog(joined.orElseThrow(), List.copyOf(logs), forecasts, report.report());
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

  /** The days after a day of issue in the newest forecast that was made by then. */
  Optional<DailyTemperatures> foreseen(LocalDate issueDate) {
    return forecasts.stream()
        .filter(forecast -> !forecast.madeOn.isAfter(issueDate))
        .max((a, b) -> a.madeOn.compareTo(b.madeOn))
        .map(Foreseen::days)
        .filter(days -> days.lastDay().isAfter(issueDate))
        .map(days -> after(days, issueDate));
  }

  private static DailyTemperatures after(DailyTemperatures days, LocalDate issueDate) {
    return days.firstDay().isAfter(issueDate)
        ? days
        : days.between(issueDate.plusDays(1), days.lastDay());
  }
}
