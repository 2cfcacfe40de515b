package agro.generation;

import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;
import org.hipparchus.util.FastMath;

/**
 * The negative binomial distribution of counts by mean {@code m} and size {@code r}, with variance
 * {@code m + m^2 / r}. Sums of independent counts with equal mean-to-size ratio add up in mean and
 * size, which is what merged trap-nights do.
 */
final class NegativeBinomial {

  private NegativeBinomial() {}

  /** Logarithm of the chance of exactly {@code count}. */
  static double logProbability(int count, double mean, double size) {
    return logWays(count, size) + logOdds(count, mean, size);
  }

  /** The part of the log chance that does not depend on the mean. */
  static double logWays(int count, double size) {
    return count == 0
        ? 0
        : Gamma.logGamma(count + size) - Gamma.logGamma(size) - Gamma.logGamma(count + 1.0);
  }

  /** The part of the log chance that depends on the mean. */
  static double logOdds(int count, double mean, double size) {
    return -size * Math.log1p(mean / size)
        + (count == 0 ? 0 : count * Math.log(mean / (mean + size)));
  }

  /** Chance of {@code count} or more. */
  static double chanceOfAtLeast(int count, double mean, double size) {
    return count <= 0 ? 1 : Beta.regularizedBeta(mean / (mean + size), count, size);
  }

  /**
   * Mean of the counts that are {@code least} or more: {@code m P(Y' >= least - 1) / P(Y >= least)}
   * with {@code Y'} of size {@code r + 1} and the same odds, since {@code y p(y; r) = m p(y - 1; r
   * + 1)}.
   */
  static double meanOfAtLeast(int least, double mean, double size) {
    var tail = chanceOfAtLeast(least, mean, size);
    if (tail < 1e-290) {
      return FastMath.max(least, mean);
    }
    var meanOfNext = mean * (size + 1) / size;
    return mean * chanceOfAtLeast(least - 1, meanOfNext, size + 1) / tail;
  }

  /** Variance of a count. */
  static double variance(double mean, double size) {
    return mean + mean * mean / size;
  }
}
