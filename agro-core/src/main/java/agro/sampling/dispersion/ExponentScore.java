package agro.sampling.dispersion;

import agro.sampling.CountSample;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The likelihood of a common exponent k, each sample with its own mean. The derivative by k is Σ
 * over samples of Σ f(x) [ψ(x + k) − ψ(k)] − n ln(1 + m / k), where the differences of ψ are sums
 * of 1 / (k + j) for j below x.
 */
final class ExponentScore {

  private static final double LARGEST = 1e9;
  private static final double SMALLEST = 1e-6;
  private static final double ACCURACY = 1e-14;

  private final List<CountSample> samples;

  /** For each sample, the number of units with more than j animals. */
  private final int[][] above;

  ExponentScore(List<CountSample> samples) {
    this.samples = samples;
    above = new int[samples.size()][];
    for (int i = 0; i < above.length; i++) {
      above[i] = new int[samples.get(i).largest()];
      for (int count : samples.get(i).counts()) {
        for (int j = 0; j < count; j++) {
          above[i][j]++;
        }
      }
    }
  }

  double derivative(double k) {
    double sum = 0;
    for (int i = 0; i < above.length; i++) {
      for (int j = 0; j < above[i].length; j++) {
        sum += above[i][j] / (k + j);
      }
      sum -= samples.get(i).size() * Math.log1p(samples.get(i).mean() / k);
    }
    return sum;
  }

  /** Minus the second derivative by k, at fixed means: the observed information. */
  double information(double k) {
    double sum = 0;
    for (int i = 0; i < above.length; i++) {
      for (int j = 0; j < above[i].length; j++) {
        sum += above[i][j] / ((k + j) * (k + j));
      }
      double mean = samples.get(i).mean();
      sum -= samples.get(i).size() * mean / (k * (k + mean));
    }
    return sum;
  }

  /**
   * The k of greatest likelihood; infinite when the likelihood rises with k without end, which is
   * so when Σ n (m − s²) with n in the denominator of s² is not below zero.
   */
  double solve() {
    double excess = 0;
    for (var sample : samples) {
      excess += (sample.size() - 1) * sample.variance() - sample.total();
    }
    if (excess <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    UnivariateFunction onLogScale = logK -> derivative(Math.exp(logK)) * Math.exp(logK);
    double high = Math.log(SMALLEST) + 1;
    while (derivative(Math.exp(high)) > 0) {
      high += 1;
      if (high > Math.log(LARGEST)) {
        return Double.POSITIVE_INFINITY;
      }
    }
    return Math.exp(
        new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, 5)
            .solve(200, onLogScale, high - 1, high));
  }
}
