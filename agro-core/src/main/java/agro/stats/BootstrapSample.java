package agro.stats;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** The values of all refits of a bootstrap, and how the refits ended. */
public final class BootstrapSample {

  private final double[][] values;
  private final RefitOutcome[] outcomes;
  private final int width;

  BootstrapSample(double[][] values, RefitOutcome[] outcomes, int width) {
    this.values = values;
    this.outcomes = outcomes;
    this.width = width;
  }

  /**
   * Number of refits that were asked for.
   *
   * @return failed ones included
   */
  public int size() {
    return outcomes.length;
  }

  /**
   * Number of values of each refit.
   *
   * @return a count
   */
  public int width() {
    return width;
  }

  /**
   * How many refits ended in one way.
   *
   * @param outcome the way
   * @return a count
   */
  public int count(RefitOutcome outcome) {
    int count = 0;
    for (var one : outcomes) {
      count += one == outcome ? 1 : 0;
    }
    return count;
  }

  /**
   * Values of one kind, in rising order.
   *
   * @param column place of the value in each refit
   * @return the values of refits that did not fail and have one; a copy
   */
  public double[] sorted(int column) {
    double[] kept = new double[outcomes.length];
    int n = 0;
    for (int i = 0; i < outcomes.length; i++) {
      if (outcomes[i] != RefitOutcome.FAILED && !Double.isNaN(values[i][column])) {
        kept[n++] = values[i][column];
      }
    }
    double[] sorted = Arrays.copyOf(kept, n);
    Arrays.sort(sorted);
    return sorted;
  }

  /**
   * A value of one refit.
   *
   * @param refit place of the refit
   * @param column place of the value
   * @return the value; NaN when the refit has none or failed
   */
  public double value(int refit, int column) {
    return outcomes[refit] == RefitOutcome.FAILED ? Double.NaN : values[refit][column];
  }

  /**
   * How many refits that did not fail lack a value.
   *
   * @param column place of the value in each refit
   * @return a count
   */
  public int missing(int column) {
    return size() - count(RefitOutcome.FAILED) - sorted(column).length;
  }

  /**
   * Standard deviation of a value.
   *
   * @param column place of the value in each refit
   * @return NaN for fewer than two values
   */
  public double standardDeviation(int column) {
    double[] sorted = sorted(column);
    double mean = Arrays.stream(sorted).average().orElse(Double.NaN);
    double sum = 0;
    for (double value : sorted) {
      sum += (value - mean) * (value - mean);
    }
    return sorted.length > 1 ? Math.sqrt(sum / (sorted.length - 1)) : Double.NaN;
  }

  /**
   * Percentile limits.
   *
   * @param column place of the value in each refit
   * @param level chance that the interval should hold the truth
   * @return the limits; NaN without values
   */
  public ConfidenceLimits percentile(int column, double level) {
    return between(sorted(column), 0.5 - 0.5 * level, 0.5 + 0.5 * level);
  }

  /**
   * Percentile limits widened to those of Student's t: where normal limits would stand at z, these
   * stand at the percentile that belongs to t. Plain percentiles are too narrow where few degrees
   * of freedom estimate the scatter.
   *
   * <p>Hesterberg 2015, The American Statistician 69:371-386 (from memory).
   *
   * @param column place of the value in each refit
   * @param level chance that the interval should hold the truth
   * @param degreesOfFreedom degrees of freedom of the scatter
   * @return the limits; NaN without values
   */
  public ConfidenceLimits studentT(int column, double level, double degreesOfFreedom) {
    double t = new TDistribution(degreesOfFreedom).inverseCumulativeProbability(0.5 + 0.5 * level);
    double tail = new NormalDistribution().cumulativeProbability(-t);
    return between(sorted(column), tail, 1 - tail);
  }

  /**
   * Studentised limits: from the percentiles of the error of each refit over its own standard
   * error.
   *
   * @param column place of the value in each refit
   * @param errorColumn place of its standard error in each refit
   * @param estimate the value of the fit
   * @param standardError its standard error
   * @param level chance that the interval should hold the truth
   * @return the limits; NaN without values
   */
  public ConfidenceLimits studentised(
      int column, int errorColumn, double estimate, double standardError, double level) {
    double[] pivots = new double[size()];
    int n = 0;
    for (int i = 0; i < size(); i++) {
      double pivot = (value(i, column) - estimate) / value(i, errorColumn);
      if (!Double.isNaN(pivot)) {
        pivots[n++] = pivot;
      }
    }
    double[] sorted = Arrays.copyOf(pivots, n);
    Arrays.sort(sorted);
    var pivot = between(sorted, 0.5 - 0.5 * level, 0.5 + 0.5 * level);
    return new ConfidenceLimits(
        estimate - pivot.high() * standardError, estimate - pivot.low() * standardError);
  }

  private static ConfidenceLimits between(double[] sorted, double low, double high) {
    return new ConfidenceLimits(quantile(sorted, low), quantile(sorted, high));
  }

  /**
   * A quantile of sorted values, between neighbours on a straight line, the smallest value at
   * 1/(n+1).
   *
   * @param sorted values in rising order
   * @param share between 0 and 1
   * @return NaN without values
   */
  public static double quantile(double[] sorted, double share) {
    int n = sorted.length;
    if (n == 0) {
      return Double.NaN;
    }
    double at = share * (n + 1) - 1;
    int below = (int) Math.floor(at);
    if (below < 0) {
      return sorted[0];
    }
    if (below >= n - 1) {
      return sorted[n - 1];
    }
    double lower = sorted[below];
    return lower + (at - below) * (sorted[below + 1] - lower);
  }
}
