package agro.stats;

/**
 * Tail areas of the standard normal distribution, fast and to twelve digits.
 *
 * <p>Rational function of Hart and others 1968, Computer Approximations, as given by West 2005,
 * Better approximations to cumulative normal functions; beyond 3.5, where it loses digits,
 * Laplace's continued fraction (from memory; checked in the tests against the library's
 * distribution).
 */
public final class NormalTail {

  private static final double FAR = 3.5;
  private static final int TERMS = 80;
  private static final double NOTHING = 38.5;
  private static final double ROOT_TWO_PI = 2.5066282746310002;

  private static final double[] ABOVE = {
    3.52624965998911e-2,
    0.700383064443688,
    6.37396220353165,
    33.912866078383,
    112.079291497871,
    221.213596169931,
    220.206867912376
  };
  private static final double[] BELOW = {
    8.83883476483184e-2,
    1.75566716318264,
    16.064177579207,
    86.7807322029461,
    296.564248779674,
    637.333633378831,
    793.826512519948,
    440.413735824752
  };

  private NormalTail() {}

  /**
   * Chance that a standard normal number lies above a value.
   *
   * @param z any number
   * @return 0 to 1; NaN for NaN
   */
  public static double above(double z) {
    double x = Math.abs(z);
    double tail;
    if (x > NOTHING) {
      tail = 0;
    } else if (x < FAR) {
      tail = Math.exp(-0.5 * x * x) * polynomial(ABOVE, x) / polynomial(BELOW, x);
    } else {
      double fraction = x;
      for (int term = TERMS; term > 0; term--) {
        fraction = x + term / fraction;
      }
      tail = Math.exp(-0.5 * x * x) / (fraction * ROOT_TWO_PI);
    }
    return z < 0 ? 1 - tail : tail;
  }

  /**
   * Chance that a standard normal number lies below a value.
   *
   * @param z any number
   * @return 0 to 1; NaN for NaN
   */
  public static double below(double z) {
    return above(-z);
  }

  private static double polynomial(double[] coefficients, double x) {
    double sum = 0;
    for (double coefficient : coefficients) {
      sum = sum * x + coefficient;
    }
    return sum;
  }
}
