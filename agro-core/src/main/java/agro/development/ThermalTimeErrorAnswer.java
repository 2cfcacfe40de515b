package agro.development;

import agro.weather.DailyTemperatures;
import java.time.LocalDate;

/**
 * How a sum of degree-days answers to the errors of one day's extremes: the best straight line in
 * the standardised errors u of the minimum and v of the maximum, f = mean + p u + q v, over their
 * normal distribution, and what is left about it. Where the rule is straight this is the plain
 * slope; near a threshold it is the slope that the whole range of the errors sees. Means are taken
 * by Gauss-Hermite quadrature with five points in each direction.
 *
 * @param toMinimum change for one standard error of the minimum, in °C·d
 * @param toMaximum change for one standard error of the maximum, in °C·d
 * @param bentVariance variance that the straight line leaves over, in (°C·d)²
 * @param expectedExcessC mean over the errors less the sum as it stands, in °C·d
 */
record ThermalTimeErrorAnswer(
    double toMinimum, double toMaximum, double bentVariance, double expectedExcessC) {

  /** Roots of the fifth Hermite polynomial for a standard normal weight: 0 and ±√(5 ± √10). */
  private static final double INNER = Math.sqrt(5 - Math.sqrt(10));

  private static final double OUTER = Math.sqrt(5 + Math.sqrt(10));
  private static final double INNER_WEIGHT = (7 + 2 * Math.sqrt(10)) / 60;
  private static final double OUTER_WEIGHT = (7 - 2 * Math.sqrt(10)) / 60;
  private static final double MIDDLE_WEIGHT = 8.0 / 15;

  private static final int POINTS = 5;

  /** Beyond this square of the correlation the two errors count as one. */
  private static final double AS_ONE = 1 - 1e-9;

  /**
   * The answer of a sum to the errors of one day. The days beside it are in the sum too, for some
   * curves end at the minimum of the day after.
   *
   * @param days the days that count, the day among them
   */
  static ThermalTimeErrorAnswer of(
      DegreeDayModel model, DailyTemperatures days, LocalDate day, double minToMax) {
    double minError = days.minStandardErrorCelsius(day);
    double maxError = days.maxStandardErrorCelsius(day);
    double own = Math.sqrt(1 - minToMax * minToMax);
    double here = sum(model, days, day, 0, 0);
    double mean = 0;
    double square = 0;
    double withU = 0;
    double withV = 0;
    for (int i = 0; i < POINTS; i++) {
      for (int k = 0; k < POINTS; k++) {
        double u = node(i);
        double v = minToMax * u + own * node(k);
        double change = sum(model, days, day, minError * u, maxError * v) - here;
        double weight = weight(i) * weight(k);
        mean += weight * change;
        square += weight * change * change;
        withU += weight * change * u;
        withV += weight * change * v;
      }
    }
    double shared = minToMax * minToMax;
    double p = shared > AS_ONE ? withU : (withU - minToMax * withV) / (1 - shared);
    double q = shared > AS_ONE ? 0 : (withV - minToMax * withU) / (1 - shared);
    double straight = p * p + q * q + 2 * minToMax * p * q;
    return new ThermalTimeErrorAnswer(p, q, Math.max(0, square - mean * mean - straight), mean);
  }

  /** Degree-days of a day and the days beside it, with so much added to its extremes. */
  private static double sum(
      DegreeDayModel model, DailyTemperatures days, LocalDate day, double toMin, double toMax) {
    var first = days.covers(day.minusDays(1)) ? day.minusDays(1) : day;
    var last = days.covers(day.plusDays(1)) ? day.plusDays(1) : day;
    var builder = DailyTemperatures.builder(first, last);
    days.between(first, last).copyInto(builder, first);
    double min = days.minCelsius(day) + toMin;
    double max = days.maxCelsius(day) + toMax;
    // An error may carry one extreme past the other; then they have changed places.
    builder.put(day, Math.min(min, max), Math.max(min, max), days.origin(day));
    var changed = builder.build(days.place(), days.medium());
    return ThermalTimeScale.of(model, changed, first).totalC();
  }

  private static double node(int index) {
    return switch (index) {
      case 0 -> -OUTER;
      case 1 -> -INNER;
      case 2 -> 0;
      case 3 -> INNER;
      default -> OUTER;
    };
  }

  private static double weight(int index) {
    return switch (index) {
      case 0, 4 -> OUTER_WEIGHT;
      case 1, 3 -> INNER_WEIGHT;
      default -> MIDDLE_WEIGHT;
    };
  }
}
