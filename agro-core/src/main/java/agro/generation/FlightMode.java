package agro.generation;

import agro.units.ThermalTime;
import java.util.Optional;

/**
 * One way to explain the counts: a local maximum of the likelihood.
 *
 * @param generations number of flights in a season, 1 or more
 * @param interval interval from flight to flight; nothing when there is one flight only
 * @param logLikelihood logarithm of the likelihood at the maximum
 * @param bic Bayesian information criterion, smaller is better
 * @param arrivals number of arrivals that make the first flight, 1 or more
 */
public record FlightMode(
    int generations,
    Optional<ThermalTime> interval,
    double logLikelihood,
    double bic,
    int arrivals) {

  /**
   * An explanation with one arrival.
   *
   * @param generations number of flights in a season
   * @param interval interval from flight to flight; nothing when there is one flight only
   * @param logLikelihood logarithm of the likelihood at the maximum
   * @param bic Bayesian information criterion
   */
  public FlightMode(
      int generations, Optional<ThermalTime> interval, double logLikelihood, double bic) {
    this(generations, interval, logLikelihood, bic, 1);
  }

  /** A rival closer than this in the information criterion leaves the answer open. */
  public static final double RIVAL_BIC = 10;

  private static final double SAME_INTERVAL = 0.05;

  /** Whether another mode tells a different interval from this one. */
  boolean contradicts(FlightMode other) {
    if (interval.isEmpty() || other.interval.isEmpty()) {
      return interval.isPresent() != other.interval.isPresent();
    }
    var ratio = interval.get().degreeDaysC() / other.interval.get().degreeDaysC();
    return Math.abs(Math.log(ratio)) > SAME_INTERVAL;
  }
}
