package agro.weather.archive;

import agro.report.ReadReport;
import agro.weather.DailyTemperatures;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.Objects;

/**
 * Daily extremes from an archive, with the report of flagged, missing and contradicting values.
 *
 * @param daily daily extremes in °C
 * @param report what was left out and what the reader should know
 */
public record ArchivedDays(DailyTemperatures daily, ReadReport report) implements Presentable {

  /** Refuses nulls. */
  public ArchivedDays {
    Objects.requireNonNull(daily, "daily");
    Objects.requireNonNull(report, "report");
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Daily temperatures of " + daily.place())
        .fact("medium", daily.medium().words())
        .fact("days", daily.firstDay() + " to " + daily.lastDay())
        .fact("days missing", daily.missingDays().size() + " of " + daily.size())
        .part(Presentation.of(report))
        .build();
  }
}
