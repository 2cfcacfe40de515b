package agro.generation;

/**
 * Form and spread of the flights of all generations of a pest. The variance grows by the same
 * amount with each generation, because each adds its own scatter of development: {@code scale(g)^2
 * = first^2 + (g - 1) added^2}.
 *
 * @param curve form of a flight
 * @param firstDegreeDaysC scale of the first flight in °C·d, above 0
 * @param addedDegreeDaysC scale added by each later generation in °C·d, 0 or more
 */
public record FlightShape(FlightCurve curve, double firstDegreeDaysC, double addedDegreeDaysC) {

  /** Checks the scales. */
  public FlightShape {
    if (!(firstDegreeDaysC > 0 && addedDegreeDaysC >= 0)
        || Double.isInfinite(firstDegreeDaysC + addedDegreeDaysC)) {
      throw new IllegalArgumentException(
          "the spread of a flight is a positive number of °C·d, but got first "
              + firstDegreeDaysC
              + " and added "
              + addedDegreeDaysC);
    }
  }

  /**
   * Scale of one flight.
   *
   * @param generation number of the flight, 1 for the first of the season
   * @return scale in °C·d
   */
  public double scaleDegreeDaysC(int generation) {
    return Math.sqrt(
        firstDegreeDaysC * firstDegreeDaysC
            + (generation - 1) * addedDegreeDaysC * addedDegreeDaysC);
  }

  /**
   * How far a share of a flight lies from its median.
   *
   * @param generation number of the flight, 1 for the first
   * @param share share of the flight, above 0 and below 1
   * @return distance in °C·d, negative before the median
   */
  public double offsetDegreeDaysC(int generation, double share) {
    return scaleDegreeDaysC(generation) * curve.quantile(share);
  }
}
