package agro.generation;

import agro.units.Temperature;
import agro.units.ThermalTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * What the counts say at one lower threshold.
 *
 * @param lower the threshold
 * @param pooled interval that explains all seasons at once
 * @param interval interval season by season; nothing when no season's flights stand apart
 * @param logLikelihood logarithm of the likelihood
 * @param days middles of the flights by the season's start and the interval
 */
public record ThresholdOutcome(
    Temperature lower,
    ThermalTime pooled,
    Optional<IntervalEstimate> interval,
    double logLikelihood,
    List<FlightDay> days) {

  /** Copies the list. */
  public ThresholdOutcome {
    Objects.requireNonNull(lower, "lower");
    Objects.requireNonNull(pooled, "pooled");
    Objects.requireNonNull(interval, "interval");
    days = List.copyOf(days);
  }

  /**
   * The interval to show: season by season where there is one.
   *
   * @return thermal time from flight to flight above this threshold
   */
  public ThermalTime workingInterval() {
    return interval.map(IntervalEstimate::mean).orElse(pooled);
  }

  /**
   * How far the middles of a flight lie from those at another threshold, averaged over the seasons
   * that reach both.
   *
   * @param other what the other threshold gives
   * @param flight number of the flight
   * @return days, positive when later; nothing when no season reaches the flight
   */
  public OptionalDouble meanShiftDays(ThresholdOutcome other, int flight) {
    return shifts(other, flight).average();
  }

  /**
   * The largest distance of the middles of a flight from those at another threshold.
   *
   * @param other what the other threshold gives
   * @param flight number of the flight
   * @return days, 0 or more; nothing when no season reaches the flight
   */
  public OptionalDouble largestShiftDays(ThresholdOutcome other, int flight) {
    return shifts(other, flight).map(Math::abs).max();
  }

  private DoubleStream shifts(ThresholdOutcome other, int flight) {
    return days.stream()
        .filter(day -> day.flight() == flight)
        .flatMapToDouble(
            day ->
                other.days.stream()
                    .filter(
                        there -> there.flight() == flight && there.season().equals(day.season()))
                    .mapToDouble(there -> day.daysIntoSeason() - there.daysIntoSeason()))
        .filter(Double::isFinite);
  }
}
