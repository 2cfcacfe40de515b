package agro.stats.multiple;

import java.util.function.DoubleUnaryOperator;

/**
 * Trapezoidal rule for smooth functions that die away at both ends, given and answered on a
 * logarithmic scale.
 *
 * <p>For such functions the error falls exponentially with the number of points: halving the step
 * squares it. The step is therefore halved until two answers agree to ten digits, and the finer one
 * has about sixteen. Trefethen and Weideman 2014, The exponentially convergent trapezoidal rule,
 * SIAM Review 56:385-458 (from memory).
 */
final class LogTrapezoid {

  private static final double AGREED = 1e-10;
  private static final double NEGLIGIBLE = 1e-18;
  private static final int HALVINGS = 14;

  private LogTrapezoid() {}

  /**
   * Integral over the whole line of a function with one peak.
   *
   * @param log logarithm of the function; minus infinity where it is zero
   * @param start where to begin climbing; where the function is zero here, the answer is zero
   * @param step first step, about the width of the peak
   * @return logarithm of the integral
   */
  static double around(DoubleUnaryOperator log, double start, double step) {
    double top = climb(log, start, step);
    double peak = log.applyAsDouble(top);
    if (peak == Double.NEGATIVE_INFINITY) {
      return peak;
    }
    double sum = 1 + side(log, peak, top + step, step) + side(log, peak, top - step, -step);
    double h = step;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middles = side(log, peak, top + 0.5 * h, h) + side(log, peak, top - 0.5 * h, -h);
      boolean agreed = Math.abs(middles - sum) <= AGREED * sum;
      sum += middles;
      h *= 0.5;
      if (agreed) {
        break;
      }
    }
    return peak + Math.log(sum * h);
  }

  private static double climb(DoubleUnaryOperator log, double start, double step) {
    double top = start;
    double height = log.applyAsDouble(top);
    double move = log.applyAsDouble(top + step) > height ? step : -step;
    for (double next = log.applyAsDouble(top + move); next > height; ) {
      top += move;
      height = next;
      next = log.applyAsDouble(top + move);
    }
    return top;
  }

  /** Sum of the values at from, from + step and so on, until they no longer count. */
  private static double side(DoubleUnaryOperator log, double peak, double from, double step) {
    double sum = 0;
    double x = from;
    double term;
    do {
      term = Math.exp(log.applyAsDouble(x) - peak);
      sum += term;
      x += step;
    } while (term > NEGLIGIBLE * sum && term > 0);
    return sum;
  }

  /**
   * Integral between limits at which the function has died away, or about which it is symmetrical.
   *
   * @param log logarithm of the function; minus infinity where it is zero
   * @param from lower limit
   * @param to upper limit
   * @param step first step at most
   * @return logarithm of the integral
   */
  static double between(DoubleUnaryOperator log, double from, double to, double step) {
    int parts = (int) Math.ceil((to - from) / step);
    double h = (to - from) / parts;
    double[] ends = values(log, from, h, parts + 1);
    double peak = Double.NEGATIVE_INFINITY;
    for (double value : ends) {
      peak = Math.max(peak, value);
    }
    if (peak == Double.NEGATIVE_INFINITY) {
      return peak;
    }
    double sum = sum(ends, peak) - 0.5 * (Math.exp(ends[0] - peak) + Math.exp(ends[parts] - peak));
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middles = sum(values(log, from + 0.5 * h, h, parts), peak);
      boolean agreed = Math.abs(middles - sum) <= AGREED * sum;
      sum += middles;
      h *= 0.5;
      parts *= 2;
      if (agreed) {
        break;
      }
    }
    return peak + Math.log(sum * h);
  }

  private static double[] values(DoubleUnaryOperator log, double from, double h, int count) {
    double[] values = new double[count];
    for (int k = 0; k < count; k++) {
      values[k] = log.applyAsDouble(from + k * h);
    }
    return values;
  }

  private static double sum(double[] logs, double peak) {
    double sum = 0;
    for (double value : logs) {
      sum += Math.exp(value - peak);
    }
    return sum;
  }
}
