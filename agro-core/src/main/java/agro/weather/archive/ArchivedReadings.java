package agro.weather.archive;

import agro.report.ReadReport;
import agro.weather.TemperatureReadings;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.Objects;

/**
 * Hourly readings from an archive, with the report of missing hours.
 *
 * @param readings temperatures in °C, missing hours left out
 * @param report what was left out and what was assumed
 */
public record ArchivedReadings(TemperatureReadings readings, ReadReport report)
    implements Presentable {

  /** Refuses nulls. */
  public ArchivedReadings {
    Objects.requireNonNull(readings, "readings");
    Objects.requireNonNull(report, "report");
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Hourly temperatures of " + readings.place())
        .fact("medium", readings.medium().words())
        .fact("readings", Integer.toString(readings.size()))
        .part(Presentation.of(report))
        .build();
  }
}
