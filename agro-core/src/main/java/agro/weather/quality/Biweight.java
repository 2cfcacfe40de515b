package agro.weather.quality;

import java.util.Arrays;

/**
 * Mean and standard deviation that a few wild values do not move: Tukey's biweight with the censor
 * distance of 7.5 median absolute deviations (Lanzante 1996).
 *
 * @param mean biweight mean; NaN without values
 * @param standardDeviation biweight standard deviation, 0 when more than half of the values are
 *     equal; NaN without values
 */
record Biweight(double mean, double standardDeviation) {

  private static final double CENSOR = 7.5;

  /**
   * Computes both from the finite values.
   *
   * @param values values in any order; NaN is left out
   */
  static Biweight of(double[] values) {
    double[] sorted = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
    if (sorted.length == 0) {
      return new Biweight(Double.NaN, Double.NaN);
    }
    double median = medianOfSorted(sorted);
    double[] distances = Arrays.stream(sorted).map(v -> Math.abs(v - median)).sorted().toArray();
    double deviation = medianOfSorted(distances);
    if (deviation == 0) {
      return new Biweight(median, 0);
    }
    double weighted = 0;
    double weights = 0;
    double squares = 0;
    double slope = 0;
    for (double value : sorted) {
      double u = (value - median) / (CENSOR * deviation);
      if (Math.abs(u) < 1) {
        double v = 1 - u * u;
        weighted += (value - median) * v * v;
        weights += v * v;
        squares += (value - median) * (value - median) * v * v * v * v;
        slope += v * (1 - 5 * u * u);
      }
    }
    return new Biweight(
        median + weighted / weights, Math.sqrt(sorted.length * squares) / Math.abs(slope));
  }

  /** Median of values in ascending order. */
  static double medianOfSorted(double[] sorted) {
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : 0.5 * (sorted[middle - 1] + sorted[middle]);
  }
}
