package agro.generation;

/**
 * One of the arrivals that make up a first flight.
 *
 * @param share its share of the flight, above 0, at most 1
 * @param delayDegreeDaysC its middle behind that of the first arrival in °C·d, 0 for the first
 */
public record FlightArrival(double share, double delayDegreeDaysC) {

  /** The flight comes in one arrival. */
  static final FlightArrival ONLY = new FlightArrival(1, 0);
}
