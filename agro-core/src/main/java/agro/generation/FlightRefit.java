package agro.generation;

import java.util.List;
import java.util.Objects;

/**
 * One refit to counts drawn anew.
 *
 * @param interval interval season by season
 * @param pooledIntervalC interval of all seasons at once in °C·d
 * @param startsC middles of the first flights in °C·d, in the order of the fit's seasons
 * @param shape form and spread of the flights
 * @param sizePerNight size of the negative binomial of one open trap-night
 */
public record FlightRefit(
    IntervalEstimate interval,
    double pooledIntervalC,
    List<Double> startsC,
    FlightShape shape,
    double sizePerNight) {

  /** Copies the list. */
  public FlightRefit {
    Objects.requireNonNull(interval, "interval");
    Objects.requireNonNull(shape, "shape");
    startsC = List.copyOf(startsC);
  }
}
