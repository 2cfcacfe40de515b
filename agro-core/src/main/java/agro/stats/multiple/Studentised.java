package agro.stats.multiple;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.Gamma;

/**
 * An extreme of normal numbers divided by an independent standard deviation estimated with some
 * degrees of freedom.
 *
 * <p>The chance is the integral of the chance for a known deviation, over the logarithm t of the
 * estimated one, whose density is proportional to exp(v t - v exp(2 t) / 2) with v degrees of
 * freedom. Both tails are integrated as such, so that neither is a difference from one.
 */
final class Studentised {

  private static final double SMALL = 1e-2;
  private static final double STIRLING_FROM = 10;
  private static final double WIDEST_STEP = 0.2;
  private static final double STEP_IN_WIDTHS = 0.75;
  private static final double EVEN = 0.5;
  private static final int EVALUATIONS = 500;
  private static final int ORDER = 5;
  private static final double PRECISION = 1e-14;
  private static final double FIRST_GUESS = 1;

  private final TailTable table;
  private final double df;
  private final double logConstant;
  private final double step;

  Studentised(TailTable table, double df) {
    this.table = table;
    this.df = df;
    this.logConstant = logConstant(0.5 * df);
    this.step = Math.min(WIDEST_STEP, STEP_IN_WIDTHS / Math.sqrt(2 * df));
  }

  /** Logarithm of 2 x^x exp(-x) / Gamma(x), by Stirling's series where that keeps more digits. */
  private static double logConstant(double x) {
    if (x < STIRLING_FROM) {
      return Math.log(2) + x * Math.log(x) - x - Gamma.logGamma(x);
    }
    double r = 1 / (x * x);
    double series =
        (1.0 / 12
                - r
                    * (1.0 / 360
                        - r
                            * (1.0 / 1260
                                - r * (1.0 / 1680 - r * (1.0 / 1188 - r * 691.0 / 360360)))))
            / x;
    return Math.log(2) + 0.5 * Math.log(x) - NormalArea.HALF_LOG_TWO_PI - series;
  }

  double above(double q) {
    return Math.min(1, Math.exp(logAbove(q)));
  }

  double below(double q) {
    return Math.min(1, Math.exp(logBelow(q)));
  }

  double logAbove(double q) {
    if (Double.isInfinite(df) || Double.isInfinite(q)) {
      return table.logAbove(q);
    }
    double start = q > 0 ? balance(q) : 0;
    return logConstant
        + LogTrapezoid.around(t -> logDensity(t) + table.logAbove(q * Math.exp(t)), start, step);
  }

  double logBelow(double q) {
    if (Double.isInfinite(df) || Double.isInfinite(q)) {
      return table.logBelow(q);
    }
    double start = q < 0 ? balance(q) : 0;
    return logConstant
        + LogTrapezoid.around(t -> logDensity(t) + table.logBelow(q * Math.exp(t)), start, step);
  }

  /** Where the exponents of density and normal tail balance: there the integrand peaks far out. */
  private double balance(double q) {
    return -Math.log(Math.hypot(1, q / Math.sqrt(2 * df)));
  }

  /** Logarithm of the density of t without its constant: -v (exp(2 t) - 1 - 2 t) / 2. */
  private double logDensity(double t) {
    double x = 2 * t;
    double excess =
        Math.abs(x) < SMALL
            ? x
                * x
                * (1.0 / 2
                    + x * (1.0 / 6 + x * (1.0 / 24 + x * (1.0 / 120 + x * (1.0 / 720 + x / 5040)))))
            : Math.expm1(x) - x;
    return -0.5 * df * excess;
  }

  /**
   * The value that is exceeded with a chance.
   *
   * @param upper chance above
   * @param lower chance below, one minus the other one, whichever of them is the more precise
   */
  double quantile(double upper, double lower) {
    if (upper <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    if (lower <= 0) {
      return table.isHalfLine() ? 0 : Double.NEGATIVE_INFINITY;
    }
    boolean inUpperTail = upper <= EVEN;
    double wanted = Math.log(inUpperTail ? upper : lower);
    // Falls with u in the upper tail, rises in the lower one.
    UnivariateFunction excess =
        u -> inUpperTail ? wanted - logAbove(stretched(u)) : logBelow(stretched(u)) - wanted;
    double low = FIRST_GUESS;
    double high = FIRST_GUESS;
    double move = EVEN;
    if (excess.value(FIRST_GUESS) < 0) {
      do {
        low = high;
        high += move;
        move *= 2;
      } while (excess.value(high) < 0);
    } else {
      do {
        high = low;
        low -= move;
        move *= 2;
      } while (excess.value(low) > 0);
    }
    var solver = new BracketingNthOrderBrentSolver(PRECISION, PRECISION, PRECISION, ORDER);
    return stretched(solver.solve(EVALUATIONS, excess, low, high));
  }

  /** Quantiles are sought on a scale on which far ones come near. */
  private double stretched(double u) {
    return table.isHalfLine() ? Math.exp(u) : Math.sinh(u);
  }
}
