package agro.stats.multiple;

import agro.stats.NormalTail;

/**
 * Areas under the standard normal density on a logarithmic scale, with full relative precision
 * between, above and below any limits.
 */
final class NormalArea {

  /** Half the logarithm of 2 pi. */
  static final double HALF_LOG_TWO_PI = 0.9189385332046728;

  private static final double FAR = 3.5;
  private static final double NARROW = 0.5;

  /**
   * Chebyshev coefficients of x M(x), M being the ratio of tail area to density, in 24.5 / x² - 1
   * for x of at least 3.5. Computed with 40 digits from the complementary error function; the terms
   * left out add up to less than 6e-16.
   */
  private static final double[] FAR_RATIO = {
    0.9649256284899429,
    -0.03339475725506867,
    0.0015576915092076285,
    -0.00011051466923001473,
    1.0132682710370083E-5,
    -1.1122542141687388E-6,
    1.3991634175838098E-7,
    -1.9613728862639336E-8,
    3.0054089156164796E-9,
    -4.963864508775117E-10,
    8.744236908848011E-11,
    -1.6294493581320448E-11,
    3.191037574871256E-12,
    -6.532528828831128E-13,
    1.391795909927495E-13,
    -3.074746401711853E-14,
    7.021329209688966E-15,
    -1.6528581829949388E-15
  };

  /** Positive nodes of Gauss and Legendre's rule with twelve points, and their weights. */
  private static final double[] NODES = {
    0.1252334085114689,
    0.3678314989981802,
    0.5873179542866175,
    0.7699026741943047,
    0.9041172563704749,
    0.9815606342467192
  };

  private static final double[] WEIGHTS = {
    0.24914704581340277,
    0.2334925365383548,
    0.20316742672306592,
    0.16007832854334622,
    0.10693932599531843,
    0.04717533638651183
  };

  private NormalArea() {}

  /** Area above x. */
  static double above(double x) {
    if (x < FAR) {
      return NormalTail.above(x);
    }
    return Math.exp(-0.5 * x * x - HALF_LOG_TWO_PI) * farRatio(x) / x;
  }

  /** Logarithm of the area above x; finite for every finite x. */
  static double logAbove(double x) {
    if (x < -1) {
      return Math.log1p(-above(-x));
    }
    return x < FAR
        ? Math.log(NormalTail.above(x))
        : -0.5 * x * x - HALF_LOG_TWO_PI + Math.log(farRatio(x) / x);
  }

  /** Logarithm of the area between middle - width / 2 and middle + width / 2. */
  static double logBetween(double middle, double width) {
    double centre = Math.abs(middle);
    if (width < NARROW) {
      return logNarrow(centre, width);
    }
    double low = centre - 0.5 * width;
    double high = centre + 0.5 * width;
    if (low <= 0) {
      return Math.log1p(-above(high) - above(-low));
    }
    double logLow = logAbove(low);
    return logLow + Math.log(-Math.expm1(logAbove(high) - logLow));
  }

  /** Narrow areas by quadrature, where the difference of two tails would lose digits. */
  private static double logNarrow(double centre, double width) {
    double half = 0.5 * width;
    double mean = 0;
    for (int each = 0; each < NODES.length; each++) {
      double step = half * NODES[each];
      mean += WEIGHTS[each] * Math.exp(-0.5 * step * step) * Math.cosh(centre * step);
    }
    return -0.5 * centre * centre - HALF_LOG_TWO_PI + Math.log(width * mean);
  }

  private static double farRatio(double x) {
    double argument = 2 * FAR * FAR / (x * x) - 1;
    return Chebyshev.sum(FAR_RATIO, argument);
  }
}
