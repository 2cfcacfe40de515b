package agro.stats.multiple;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Series of Chebyshev polynomials on the interval from -1 to 1. */
final class Chebyshev {

  private Chebyshev() {}

  /** Value of a series by Clenshaw's recurrence. */
  static double sum(double[] coefficients, double x) {
    double twice = 2 * x;
    double ahead = 0;
    double next = 0;
    for (int k = coefficients.length - 1; k > 0; k--) {
      double here = coefficients[k] + twice * next - ahead;
      ahead = next;
      next = here;
    }
    return coefficients[0] + x * next - ahead;
  }

  /**
   * The polynomial through the values of a function at the zeros of a Chebyshev polynomial, without
   * the last terms that are lost in rounding.
   */
  static double[] interpolate(DoubleUnaryOperator function, int terms, double negligible) {
    double[] values = new double[terms];
    for (int k = 0; k < terms; k++) {
      values[k] = function.applyAsDouble(Math.cos(Math.PI * (k + 0.5) / terms));
    }
    double[] coefficients = new double[terms];
    for (int j = 0; j < terms; j++) {
      double total = 0;
      for (int k = 0; k < terms; k++) {
        total += values[k] * Math.cos(Math.PI * j * (k + 0.5) / terms);
      }
      coefficients[j] = (j == 0 ? 1 : 2) * total / terms;
    }
    int kept = terms;
    while (kept > 1 && Math.abs(coefficients[kept - 1]) < negligible) {
      kept--;
    }
    return Arrays.copyOf(coefficients, kept);
  }
}
