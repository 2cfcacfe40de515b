package agro.trial.bioassay;

import agro.stats.ConfidenceLimits;
import agro.units.Numbers;
import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * Animals that responded among those exposed.
 *
 * @param responded those that responded
 * @param exposed all
 */
public record ShareCount(int responded, int exposed) {

  /** Refuses counts that cannot be. */
  public ShareCount {
    if (exposed < 1 || responded < 0 || responded > exposed) {
      throw new IllegalArgumentException(
          responded + " of " + exposed + " is no share; expected 0 to all of at least one");
    }
  }

  /**
   * The share.
   *
   * @return 0 to 1
   */
  public double share() {
    return (double) responded / exposed;
  }

  /**
   * Exact binomial limits of Clopper and Pearson 1934.
   *
   * @param confidence for example 0.95
   * @return limits of the share
   */
  public ConfidenceLimits limits(double confidence) {
    double tail = 0.5 * (1 - confidence);
    int k = responded;
    int n = exposed;
    return new ConfidenceLimits(
        k == 0 ? 0 : k == n ? Math.pow(tail, 1.0 / n) : quantile(k, n - k + 1.0, tail),
        k == n ? 1 : k == 0 ? 1 - Math.pow(tail, 1.0 / n) : quantile(k + 1.0, n - k, 1 - tail));
  }

  private static double quantile(double alpha, double beta, double p) {
    return new BetaDistribution(alpha, beta).inverseCumulativeProbability(p);
  }

  @Override
  public String toString() {
    return responded + " of " + exposed + " (" + Numbers.fixed(100 * share(), 1) + " %)";
  }
}
