package agro.generation;

import agro.units.ThermalTime;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one season tells.
 *
 * @param year the year that names the season
 * @param start thermal time from the season's start day to the middle of the first flight
 * @param startDay the day on which that middle falls; nothing when it lies beyond the temperatures
 * @param interval interval from flight to flight in this season alone; nothing when its flights do
 *     not stand apart
 * @param catchSizes adults that one trap open all through a flight would have taken, flight by
 *     flight; NaN for a flight of which the traps saw less than a hundredth
 * @param biofix the biofix by the chosen rule; nothing when the rule was not fulfilled
 * @param visits visits that entered the fit
 * @param totalCatch adults caught in them
 * @param residualCorrelation correlation of the Pearson residuals of running visits
 */
public record SeasonTiming(
    int year,
    ThermalTime start,
    Optional<LocalDate> startDay,
    Optional<ThermalTime> interval,
    List<Double> catchSizes,
    Optional<Biofix> biofix,
    int visits,
    long totalCatch,
    double residualCorrelation) {

  /** Copies the list. */
  public SeasonTiming {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(startDay, "startDay");
    Objects.requireNonNull(interval, "interval");
    Objects.requireNonNull(biofix, "biofix");
    catchSizes = List.copyOf(catchSizes);
  }
}
