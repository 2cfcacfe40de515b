package agro.stats;

/**
 * Least squares after Levenberg and Marquardt, with bounds on the parameters. The damping follows
 * the gain of each step after Nielsen; columns are scaled to unit length, so that the result does
 * not depend on the units of the parameters; a parameter that would leave its bounds is held there
 * until the gradient pulls it back.
 *
 * <p>An object holds its working memory and serves one thread.
 *
 * <p>Levenberg 1944, Quarterly of Applied Mathematics 2:164-168; Marquardt 1963, SIAM Journal 11:
 * 431-441; damping by Nielsen 1999, report IMM-REP-1999-05, Technical University of Denmark (all
 * from memory).
 */
public final class LevenbergMarquardt {

  private static final int MOST_ITERATIONS = 400;
  private static final double FIRST_DAMPING = 1e-3;
  private static final double MOST_DAMPING = 1e14;

  /** A step this small against the parameters, or a gain this small, is the end. */
  private static final double SMALL_STEP = 1e-11;

  private static final double SMALL_GAIN = 1e-15;
  private static final double SMALL_GRADIENT = 1e-12;

  private final int k;
  private final int n;
  private final double[] low;
  private final double[] high;
  private final double[] residuals;
  private final double[] tried;
  private final double[] jacobian;
  private final double[] normal;
  private final double[] factor;
  private final double[] gradient;
  private final double[] length;
  private final double[] step;
  private final double[] candidate;
  private final boolean[] held;

  private LevenbergMarquardt(int k, int n, double[] low, double[] high) {
    this.k = k;
    this.n = n;
    this.low = low.clone();
    this.high = high.clone();
    residuals = new double[n];
    tried = new double[n];
    jacobian = new double[n * k];
    normal = new double[k * k];
    factor = new double[k * k];
    gradient = new double[k];
    length = new double[k];
    step = new double[k];
    candidate = new double[k];
    held = new boolean[k];
  }

  /**
   * A search within bounds. Equal bounds fix a parameter.
   *
   * @param observations number of residuals
   * @param low lower bound of each parameter, possibly minus infinity
   * @param high upper bound of each parameter, possibly infinity
   * @return the search
   * @throws IllegalArgumentException if the bounds do not fit together
   */
  public static LevenbergMarquardt within(int observations, double[] low, double[] high) {
    if (low.length != high.length || low.length == 0 || observations < 1) {
      throw new IllegalArgumentException(
          "bounds of " + low.length + " and " + high.length + " parameters");
    }
    for (int j = 0; j < low.length; j++) {
      if (!(low[j] <= high[j])) {
        throw new IllegalArgumentException("bounds from " + low[j] + " to " + high[j]);
      }
    }
    return new LevenbergMarquardt(low.length, observations, low, high);
  }

  /**
   * Searches downhill from a start.
   *
   * @param model the residuals
   * @param start where to begin; moved into the bounds
   * @return where it ended
   */
  public LeastSquaresSolution minimise(ResidualModel model, double[] start) {
    double[] p = new double[k];
    for (int j = 0; j < k; j++) {
      p[j] = Math.min(high[j], Math.max(low[j], start[j]));
    }
    model.residuals(p, residuals);
    double sum = squares(residuals);
    double damping = FIRST_DAMPING;
    double growth = 2;
    boolean converged = false;
    boolean fresh = true;
    int iteration = 0;
    while (!converged && iteration < MOST_ITERATIONS && damping < MOST_DAMPING) {
      iteration++;
      if (fresh) {
        model.jacobian(p, jacobian);
        normalEquations();
        fresh = false;
      }
      hold(p);
      if (stationary(sum)) {
        converged = true;
        break;
      }
      if (!solve(damping)) {
        damping *= growth;
        growth *= 2;
        continue;
      }
      double moved = move(p);
      model.residuals(candidate, tried);
      double next = squares(tried);
      double expected = expectedGain(p, damping);
      if (next < sum) {
        double gain = (sum - next) / expected;
        converged = sum - next <= SMALL_GAIN * sum && moved < Math.sqrt(SMALL_STEP);
        System.arraycopy(candidate, 0, p, 0, k);
        System.arraycopy(tried, 0, residuals, 0, n);
        sum = next;
        double inner = 2 * gain - 1;
        damping *= Math.max(1.0 / 10, 1 - inner * inner * inner);
        growth = 2;
        fresh = true;
      } else {
        converged = moved <= SMALL_STEP || expected <= SMALL_GAIN * sum;
        damping *= growth;
        growth *= 2;
      }
    }
    return new LeastSquaresSolution(
        p, onBounds(p), sum, iteration, converged || damping >= MOST_DAMPING);
  }

  private boolean[] onBounds(double[] p) {
    boolean[] on = new boolean[k];
    for (int j = 0; j < k; j++) {
      on[j] = low[j] < high[j] && (p[j] <= low[j] || p[j] >= high[j]);
    }
    return on;
  }

  private static double squares(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value * value;
    }
    return Double.isNaN(sum) ? Double.POSITIVE_INFINITY : sum;
  }

  /** Normal matrix and gradient of half the sum of squares, columns scaled to unit length. */
  private void normalEquations() {
    for (int j = 0; j < k; j++) {
      double sum = 0;
      double slope = 0;
      for (int i = 0, at = j; i < n; i++, at += k) {
        sum += jacobian[at] * jacobian[at];
        slope += jacobian[at] * residuals[i];
      }
      length[j] = sum > 0 ? Math.sqrt(sum) : 1;
      gradient[j] = slope / length[j];
    }
    for (int a = 0; a < k; a++) {
      for (int b = 0; b <= a; b++) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
          sum += jacobian[i * k + a] * jacobian[i * k + b];
        }
        normal[a * k + b] = sum / (length[a] * length[b]);
      }
    }
  }

  private void hold(double[] p) {
    for (int j = 0; j < k; j++) {
      held[j] =
          low[j] == high[j]
              || (p[j] <= low[j] && gradient[j] > 0)
              || (p[j] >= high[j] && gradient[j] < 0);
    }
  }

  private boolean stationary(double sum) {
    double most = 0;
    for (int j = 0; j < k; j++) {
      if (!held[j]) {
        most = Math.max(most, Math.abs(gradient[j]));
      }
    }
    return most <= SMALL_GRADIENT * Math.sqrt(sum) || sum == 0;
  }

  /** Solves the damped equations by Cholesky's method; the step is in scaled units. */
  private boolean solve(double damping) {
    for (int a = 0; a < k; a++) {
      for (int b = 0; b <= a; b++) {
        double sum = held[a] || held[b] ? 0 : normal[a * k + b];
        if (a == b) {
          sum = held[a] ? 1 : sum * (1 + damping) + 1e-300;
        }
        for (int c = 0; c < b; c++) {
          sum -= factor[a * k + c] * factor[b * k + c];
        }
        if (a == b) {
          if (!(sum > 0)) {
            return false;
          }
          factor[a * k + a] = Math.sqrt(sum);
        } else {
          factor[a * k + b] = sum / factor[b * k + b];
        }
      }
    }
    for (int a = 0; a < k; a++) {
      double sum = held[a] ? 0 : -gradient[a];
      for (int c = 0; c < a; c++) {
        sum -= factor[a * k + c] * step[c];
      }
      step[a] = sum / factor[a * k + a];
    }
    for (int a = k - 1; a >= 0; a--) {
      double sum = step[a];
      for (int c = a + 1; c < k; c++) {
        sum -= factor[c * k + a] * step[c];
      }
      step[a] = sum / factor[a * k + a];
    }
    return true;
  }

  /** Makes the candidate inside the bounds; answers the largest relative change. */
  private double move(double[] p) {
    double most = 0;
    for (int j = 0; j < k; j++) {
      double to = Math.min(high[j], Math.max(low[j], p[j] + step[j] / length[j]));
      candidate[j] = to;
      most = Math.max(most, Math.abs(to - p[j]) / (Math.abs(p[j]) + 1e-30));
    }
    return most;
  }

  /** What the linear model promises for the step as it was cut by the bounds. */
  private double expectedGain(double[] p, double damping) {
    double gain = 0;
    for (int j = 0; j < k; j++) {
      double s = (candidate[j] - p[j]) * length[j];
      gain += s * (damping * normal[j * k + j] * s - gradient[j]);
    }
    return Math.max(gain, Double.MIN_NORMAL);
  }
}
