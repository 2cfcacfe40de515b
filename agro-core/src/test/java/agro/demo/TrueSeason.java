package agro.demo;

import agro.development.ThermalTimeScale;
import java.util.List;
import java.util.Optional;

/**
 * The truth of one pest in one season.
 *
 * @param year the season's year
 * @param pest name of the pest
 * @param flights the generations that fly, the last one perhaps only in part
 */
public record TrueSeason(int year, String pest, List<TrueFlight> flights) {

  /** Keeps an immutable list. */
  public TrueSeason {
    flights = List.copyOf(flights);
  }

  /** The flight of a generation, counted from 1; empty when no adult of it is on the wing. */
  public Optional<TrueFlight> flight(int generation) {
    return flights.stream().filter(flight -> flight.generation() == generation).findFirst();
  }

  /**
   * True interval from the median of one flight to the median of the next, in °C·d on the true
   * hourly scale; NaN when the later median is not reached this season.
   */
  public double intervalDegreeDaysC(int fromGeneration) {
    return median(fromGeneration + 1) - median(fromGeneration);
  }

  /**
   * The same interval on another scale that counts from the same day. A daily sine through the
   * extremes does not add up to the true hourly sum, so its interval is another one.
   */
  public double intervalDegreeDaysC(int fromGeneration, ThermalTimeScale scale) {
    return median(fromGeneration + 1, scale) - median(fromGeneration, scale);
  }

  private double median(int generation, ThermalTimeScale scale) {
    return flight(generation).map(found -> found.degreeDaysCOf(0.5, scale)).orElse(Double.NaN);
  }

  private double median(int generation) {
    return flight(generation).map(flight -> flight.degreeDaysCOf(0.5)).orElse(Double.NaN);
  }
}
