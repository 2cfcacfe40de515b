package agro.generation;

import org.hipparchus.special.Beta;
import org.hipparchus.util.FastMath;

/**
 * The negative binomial distribution of counts by mean {@code m} and size {@code r}, with variance
 * {@code m + m^2 / r}. Sums of independent counts with equal mean-to-size ratio add up in mean and
 * size, which is what merged trap-nights do.
 */
final class NegativeBinomial {

  private static final double SERIES_FROM = 10;
  private static final double HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);

  private NegativeBinomial() {}

  /** Logarithm of the chance of exactly {@code count}. */
  static double logProbability(int count, double mean, double size) {
    return logWays(count, size) + logOdds(count, mean, size);
  }

  /** The part of the log chance that does not depend on the mean. */
  static double logWays(int count, double size) {
    return count == 0 ? 0 : logGamma(count + size) - logGamma(size) - logGamma(count + 1.0);
  }

  /**
   * The part of the log chance that depends on the mean. The plain logarithm serves where its
   * argument is one and a little: what is lost is multiplied by the size alone, and the library's
   * own function for that case is slow.
   */
  static double logOdds(int count, double mean, double size) {
    var none = -size * Math.log(1 + mean / size);
    return count == 0 ? none : none + count * Math.log(mean / (mean + size));
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

  /**
   * Logarithm of the gamma function for {@code x > 0}: Stirling's series at 10 or more (error below
   * 1e-13), and the recursion below it. The fit takes it for every visit at every size it tries.
   */
  static double logGamma(double x) {
    var product = 1.0;
    var at = x;
    while (at < SERIES_FROM) {
      product *= at;
      at += 1;
    }
    var inverse = 1 / at;
    var square = inverse * inverse;
    var series =
        inverse
            * (1.0 / 12
                - square
                    * (1.0 / 360 - square * (1.0 / 1260 - square * (1.0 / 1680 - square / 1188))));
    return (at - 0.5) * Math.log(at) - at + HALF_LOG_TWO_PI + series - Math.log(product);
  }

  /** The derivative of {@link #logGamma}. */
  static double digamma(double x) {
    var sum = 0.0;
    var at = x;
    while (at < SERIES_FROM) {
      sum -= 1 / at;
      at += 1;
    }
    var square = 1 / (at * at);
    return sum
        + Math.log(at)
        - 0.5 / at
        - square * (1.0 / 12 - square * (1.0 / 120 - square * (1.0 / 252 - square / 240)));
  }

  /** The second derivative of {@link #logGamma}. */
  static double trigamma(double x) {
    var sum = 0.0;
    var at = x;
    while (at < SERIES_FROM) {
      sum += 1 / (at * at);
      at += 1;
    }
    var inverse = 1 / at;
    var square = inverse * inverse;
    return sum
        + inverse
        + square / 2
        + square * inverse * (1.0 / 6 - square * (1.0 / 30 - square * (1.0 / 42 - square / 30)));
  }

  /**
   * First and second derivative of the log chance of a count with respect to the logarithm of the
   * size, the mean held.
   *
   * @param slopes the two derivatives are added to its elements
   */
  static void addSizeSlopes(int count, double mean, double size, double[] slopes) {
    var below = mean + size;
    var first = -Math.log(1 + mean / size) + (mean - count) / below;
    var second = mean / (size * below) - (mean - count) / (below * below);
    if (count > 0) {
      first += digamma(count + size) - digamma(size);
      second += trigamma(count + size) - trigamma(size);
    }
    slopes[0] += size * first;
    slopes[1] += size * first + size * size * second;
  }
}
