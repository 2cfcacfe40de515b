package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.time.Duration;

/**
 * A few readings that stand off the readings before and after them to the same side. A jump that
 * stays is no spike. For one reading v between a and b the figure is |v - (a + b) / 2| - |(a - b) /
 * 2| (GTSPP manual), the distance from the nearer neighbour.
 *
 * @param standoffCelsius distance from both neighbours that a spike passes, in °C, above 0
 * @param mostReadings most readings that a spike may be wide, 1 or more
 * @param farthestNeighbour longest time from a spike to either neighbour
 */
public record SpikeCheck(double standoffCelsius, int mostReadings, Duration farthestNeighbour)
    implements QualityCheck, ReadingsTest {

  /**
   * Checks the limits.
   *
   * @throws InputProblem when one is not above zero
   */
  public SpikeCheck {
    if (!(standoffCelsius > 0) || mostReadings < 1 || farthestNeighbour.isNegative()) {
      throw InputProblem.of(
              "a spike of " + standoffCelsius + " °C, at most " + mostReadings + " readings wide")
          .expected("a distance above 0 °C and at least one reading")
          .because("every reading differs a little from its neighbours")
          .mend("give for example 4 °C and 3 readings");
    }
  }

  /**
   * 4 °C from both neighbours, the published hourly tolerance, at most three readings wide, with
   * neighbours at most one hour away.
   *
   * @return the check
   */
  public static SpikeCheck published() {
    return new SpikeCheck(4, 3, Duration.ofHours(1));
  }

  @Override
  public QualityRule rule() {
    return QualityRule.SPIKE;
  }

  @Override
  public String limits() {
    return Numbers.plain(standoffCelsius)
        + " °C off both neighbours, at most "
        + mostReadings
        + " readings wide, neighbours at most "
        + Numbers.significant(farthestNeighbour.toMinutes() / 60.0, 2)
        + " h away";
  }

  @Override
  public void flag(ReadingsInTest series) {
    long step = series.readings().medianStepSeconds();
    if (step > farthestNeighbour.toSeconds()) {
      series.notChecked(
          rule(),
          "readings every "
              + Numbers.significant(step / 3600.0, 2)
              + " h are too far apart to tell a spike from weather");
      return;
    }
    int[] places = series.usable();
    for (int i = 1; i < places.length - 1; i++) {
      for (int width = 1; width <= mostReadings && i + width < places.length; width++) {
        double standoff = standoff(series, places, i, width);
        if (standoff > standoffCelsius) {
          raise(series, places, i, width, standoff);
          i += width;
          break;
        }
      }
    }
  }

  private void raise(ReadingsInTest series, int[] places, int at, int width, double standoff) {
    double least = series.celsius(places[at]) > series.celsius(places[at - 1]) ? 1 : -1;
    for (int k = at; k < at + width; k++) {
      series.fail(
          rule(),
          places[k],
          places[k],
          least * standoff,
          least * standoffCelsius,
          "°C",
          "stands off the readings before and after: sun or water on the sensor, a loose contact"
              + " or a wrong digit");
    }
  }

  /** Least distance of the readings from both neighbours to one side; 0 or less for none. */
  private double standoff(ReadingsInTest series, int[] places, int at, int width) {
    int before = places[at - 1];
    int after = places[at + width];
    long farthest = farthestNeighbour.toSeconds();
    if (series.second(places[at]) - series.second(before) > farthest
        || series.second(after) - series.second(places[at + width - 1]) > farthest) {
      return 0;
    }
    double a = series.celsius(before);
    double b = series.celsius(after);
    double above = Double.POSITIVE_INFINITY;
    double below = Double.POSITIVE_INFINITY;
    for (int k = at; k < at + width; k++) {
      double v = series.celsius(places[k]);
      above = Math.min(above, v - Math.max(a, b));
      below = Math.min(below, Math.min(a, b) - v);
    }
    return Math.max(above, below);
  }
}
