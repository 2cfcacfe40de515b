package agro.development;

import agro.weather.DayOrigin;
import agro.weather.DayRuns;
import java.util.Objects;

/**
 * What one run of days with errors adds to a sum of degree-days.
 *
 * @param days the days
 * @param origin where their temperatures come from
 * @param degreeDaysC their degree-days in °C·d
 * @param standardErrorC standard error of those degree-days in °C·d
 */
public record ThermalTimeErrorPart(
    DayRuns.Run days, DayOrigin origin, double degreeDaysC, double standardErrorC) {
  /** Refuses nulls. */
  public ThermalTimeErrorPart {
    Objects.requireNonNull(days, "days");
    Objects.requireNonNull(origin, "origin");
  }
}
