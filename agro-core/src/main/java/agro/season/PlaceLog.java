package agro.season;

import agro.report.ReadReport;
import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All that the logs of one place tell. */
record PlaceLog(DailyTemperatures days, List<Foreseen> forecasts, ReadReport report) {

  /** Forecast days and the day on which they were made. */
  record Foreseen(LocalDate madeOn, DailyTemperatures days) {}

  /** The logs as they were known at the end of a day; places without a known day are left out. */
  static Map<String, PlaceLog> upTo(Map<String, PlaceLog> logs, LocalDate day) {
    var known = new LinkedHashMap<String, PlaceLog>();
    logs.forEach(
        (place, log) -> {
          if (!log.days.firstDay().isAfter(day)) {
            known.put(place, new PlaceLog(log.days.upTo(day), log.forecasts, log.report));
          }
        });
    return known;
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
