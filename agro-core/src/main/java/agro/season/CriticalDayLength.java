package agro.season;

import agro.source.Reference;
import agro.weather.sun.SunHeight;
import java.util.Objects;

/**
 * The day length below which a pest lays eggs that give no further flight in the season.
 *
 * @param hours critical day length in hours, above 0 and below 24
 * @param ends where the sun stands when the day begins and ends
 * @param source where the figure comes from
 */
public record CriticalDayLength(double hours, SunHeight ends, Reference source) {

  /** Refuses nulls. */
  public CriticalDayLength {
    Objects.requireNonNull(ends, "ends");
    Objects.requireNonNull(source, "source");
  }
}
