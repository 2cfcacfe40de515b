package agro.trial.bioassay;

import agro.stats.NormalQuantile;
import agro.stats.NormalTail;
import agro.units.Numbers;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/**
 * Quantiles and tails that tests and limits need. Tails of chi-squared with few degrees of freedom
 * are finite sums, Abramowitz and Stegun 1964, 26.4.4 and 26.4.5 (from memory): the library's
 * incomplete gamma function loads tables that take longer than a thousand fits.
 */
final class Deviates {

  private static final int MOST_TERMS = 100;
  private static final double UNDERFLOW = 1400;
  private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

  private Deviates() {}

  /** Two-sided normal deviate of a confidence. */
  static double normal(double confidence) {
    return -NormalQuantile.of(0.5 * (1 - confidence));
  }

  /** Two-sided Student deviate of a confidence, to nearly all digits of a double. */
  static double student(double confidence, int degreesOfFreedom) {
    var distribution = new TDistribution(degreesOfFreedom);
    double p = 0.5 * (1 + confidence);
    double t = distribution.inverseCumulativeProbability(p);
    return t - (distribution.cumulativeProbability(t) - p) / distribution.density(t);
  }

  /** Chance of a chi-squared as large or larger. */
  static double chiSquaredTail(double chiSquared, int degreesOfFreedom) {
    double x = Math.max(0, chiSquared);
    if (degreesOfFreedom == 0) {
      return 1;
    }
    if (degreesOfFreedom > MOST_TERMS || !(x < UNDERFLOW)) {
      return Gamma.regularizedGammaQ(0.5 * degreesOfFreedom, 0.5 * x);
    }
    boolean isEven = degreesOfFreedom % 2 == 0;
    double sum = isEven ? 0 : 2 * NormalTail.above(Math.sqrt(x));
    double term = Math.exp(-0.5 * x) * (isEven ? 1 : 2 * Math.sqrt(x) / ROOT_TWO_PI);
    for (int below = isEven ? 2 : 3; below <= degreesOfFreedom; below += 2) {
      sum += term;
      term *= x / below;
    }
    return Math.min(1, sum);
  }

  /** Chance of an F as large or larger. */
  static double tailOfF(double f, int above, int below) {
    return f <= 0 ? 1 : Beta.regularizedBeta(below / (below + above * f), 0.5 * below, 0.5 * above);
  }

  /** P in the usual form. */
  static String words(double p) {
    return p < 0.001 ? "P < 0.001" : "P = " + Numbers.fixed(p, 3);
  }
}
