package agro.stats.power;

import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/**
 * Sums of incomplete beta functions with Poisson weights, of which noncentral distributions
 * consist. Each sum starts where its terms are smallest and only adds, so that no digit is lost by
 * subtraction.
 */
final class PoissonMixture {

  private static final double ACCURACY = 1e-15;
  private static final int TERMS = 1_000_000;
  private static final double SPREADS = 12;
  private static final int MARGIN = 60;

  private final double mean;
  private final double shift;
  private final int first;
  private final int last;

  /**
   * Weights e^-m m^(j + shift) / Γ(j + shift + 1), j from 0; with shift 0 those of Poisson.
   *
   * @param mean m, not negative
   * @param shift 0 or a half
   */
  PoissonMixture(double mean, double shift) {
    this.mean = mean;
    this.shift = shift;
    double width = SPREADS * Math.sqrt(mean) + MARGIN;
    first = (int) Math.max(0, Math.floor(mean - width));
    last = (int) Math.ceil(mean + width);
  }

  private double weight(int j) {
    if (mean == 0) {
      return j + shift == 0 ? 1 : 0;
    }
    return Math.exp(-mean + (j + shift) * Math.log(mean) - Gamma.logGamma(j + shift + 1));
  }

  /** Sum of weight(j) I_x(a + j, b), from the largest j, where I is smallest, downwards. */
  double below(double x, double complement, double a, double b) {
    double value = incomplete(x, complement, a + last, b);
    double sum = weight(last) * value;
    for (int j = last - 1; j >= first; j--) {
      value += step(x, complement, a + j, b);
      sum += weight(j) * value;
    }
    return sum;
  }

  /** Sum of weight(j) (1 - I_x(a + j, b)), from the smallest j upwards. */
  double above(double x, double complement, double a, double b) {
    double value = incomplete(complement, x, b, a + first);
    double sum = weight(first) * value;
    for (int j = first + 1; j <= last; j++) {
      value += step(x, complement, a + j - 1, b);
      sum += weight(j) * value;
    }
    return sum;
  }

  private static double incomplete(double x, double complement, double a, double b) {
    if (x <= 0) {
      return 0;
    }
    if (complement <= 0) {
      return 1;
    }
    // The smaller of both arguments is the one that keeps its digits.
    return x > 0.5
        ? 1 - Beta.regularizedBeta(complement, b, a, ACCURACY, TERMS)
        : Beta.regularizedBeta(x, a, b, ACCURACY, TERMS);
  }

  /** I_x(a, b) - I_x(a + 1, b) = x^a (1 - x)^b / (a B(a, b)). */
  private static double step(double x, double complement, double a, double b) {
    if (x <= 0 || complement <= 0) {
      return 0;
    }
    return Math.exp(a * Math.log(x) + b * Math.log(complement) - Math.log(a) - Beta.logBeta(a, b));
  }
}
