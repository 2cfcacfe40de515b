package agro.stats;

/**
 * Newton's method with damping for a smooth function of a few parameters, with bounds. Slopes and
 * curvatures come from central differences, so the function need not give derivatives.
 *
 * <p>Damped and scaled as in Marquardt 1963, SIAM Journal 11:431-441 (from memory), with the full
 * curvature in place of the product of slopes.
 */
public final class DampedNewton {

  private static final int MOST_ITERATIONS = 200;
  private static final double MOST_DAMPING = 1e12;
  private static final double RELATIVE_STEP = 1e-4;
  private static final double SMALL_GAIN = 1e-10;

  private final double[] low;
  private final double[] high;
  private final double[] scale;
  private final int k;

  private DampedNewton(double[] low, double[] high, double[] scale) {
    this.low = low.clone();
    this.high = high.clone();
    this.scale = scale.clone();
    k = low.length;
  }

  /**
   * A search within bounds. Equal bounds fix a parameter.
   *
   * @param low lower bound of each parameter, possibly minus infinity
   * @param high upper bound of each parameter, possibly infinity
   * @param scale a change of each parameter that matters, positive
   * @return the search
   */
  public static DampedNewton within(double[] low, double[] high, double[] scale) {
    if (low.length != high.length || low.length != scale.length) {
      throw new IllegalArgumentException("bounds and scales of different numbers of parameters");
    }
    return new DampedNewton(low, high, scale);
  }

  /**
   * Searches downhill from a start.
   *
   * @param model the function
   * @param start where to begin, moved into the bounds
   * @return where it ended
   */
  public FoundMinimum minimise(ScalarModel model, double[] start) {
    double[] p = inside(start);
    double value = finite(model.value(p));
    double damping = 1e-3;
    boolean converged = false;
    int iteration = 0;
    double[] slope = new double[k];
    double[][] curve = new double[k][k];
    boolean fresh = true;
    while (iteration < MOST_ITERATIONS && damping < MOST_DAMPING && !converged) {
      iteration++;
      if (fresh) {
        differentiate(model, p, value, slope, curve);
        fresh = false;
      }
      boolean[] held = held(p, slope);
      double[] step = new Equations(curve, slope, held, damping).solve();
      if (step.length == 0) {
        damping = Math.max(1e-6, 4 * damping);
        continue;
      }
      double[] q = p.clone();
      for (int j = 0; j < k; j++) {
        q[j] += step[j];
      }
      q = inside(q);
      double next = finite(model.value(q));
      if (next < value) {
        converged = value - next <= SMALL_GAIN * (1 + 1e-3 * Math.abs(value));
        p = q;
        value = next;
        damping = Math.max(1e-12, damping / 8);
        fresh = true;
      } else {
        converged = next - value <= SMALL_GAIN && damping > 1e2;
        damping *= 6;
      }
    }
    converged |= damping >= MOST_DAMPING;
    differentiate(model, p, value, slope, curve);
    return new FoundMinimum(p, standardErrors(curve, p), onBounds(p), value, iteration, converged);
  }

  private double[] inside(double[] p) {
    double[] q = p.clone();
    for (int j = 0; j < k; j++) {
      q[j] = Math.min(high[j], Math.max(low[j], q[j]));
    }
    return q;
  }

  private static double finite(double value) {
    return Double.isFinite(value) ? value : 1e300;
  }

  private boolean[] held(double[] p, double[] slope) {
    boolean[] held = new boolean[k];
    for (int j = 0; j < k; j++) {
      held[j] =
          low[j] == high[j]
              || (p[j] <= low[j] && slope[j] > 0)
              || (p[j] >= high[j] && slope[j] < 0);
    }
    return held;
  }

  private boolean[] onBounds(double[] p) {
    boolean[] on = new boolean[k];
    for (int j = 0; j < k; j++) {
      on[j] = low[j] < high[j] && (p[j] <= low[j] || p[j] >= high[j]);
    }
    return on;
  }

  private double stepOf(int j, double[] p) {
    return RELATIVE_STEP * Math.max(scale[j], 1e-3 * Math.abs(p[j]));
  }

  private void differentiate(
      ScalarModel model, double[] p, double value, double[] slope, double[][] curve) {
    double[] q = p.clone();
    for (int a = 0; a < k; a++) {
      double ha = stepOf(a, p);
      q[a] = p[a] + ha;
      double up = finite(model.value(q));
      q[a] = p[a] - ha;
      double down = finite(model.value(q));
      q[a] = p[a];
      slope[a] = (up - down) / (2 * ha);
      curve[a][a] = (up - 2 * value + down) / (ha * ha);
    }
    for (int a = 0; a < k; a++) {
      for (int b = 0; b < a; b++) {
        curve[a][b] = mixed(model, q, p, a, b);
        curve[b][a] = curve[a][b];
      }
    }
  }

  private double mixed(ScalarModel model, double[] q, double[] p, int a, int b) {
    double ha = stepOf(a, p);
    double hb = stepOf(b, p);
    double sum = 0;
    for (int sign = 0; sign < 4; sign++) {
      int one = sign < 2 ? 1 : -1;
      int other = sign % 2 == 0 ? 1 : -1;
      q[a] = p[a] + one * ha;
      q[b] = p[b] + other * hb;
      sum += one * other * finite(model.value(q));
    }
    q[a] = p[a];
    q[b] = p[b];
    return sum / (4 * ha * hb);
  }

  private double[] standardErrors(double[][] curve, double[] p) {
    double[] errors = new double[k];
    boolean[] held = onBounds(p);
    for (int j = 0; j < k; j++) {
      held[j] |= low[j] == high[j];
    }
    for (int j = 0; j < k; j++) {
      double[] unit = new double[k];
      unit[j] = -1;
      double[] column = held[j] ? new double[0] : new Equations(curve, unit, held, 0).solve();
      errors[j] = column.length == 0 ? Double.NaN : Math.sqrt(column[j]);
    }
    return errors;
  }

  /** Damped equations of one step, scaled by the diagonal. */
  private static final class Equations {
    private final double[][] curve;
    private final double[] slope;
    private final boolean[] held;
    private final double damping;

    Equations(double[][] curve, double[] slope, boolean[] held, double damping) {
      this.curve = curve;
      this.slope = slope;
      this.held = held;
      this.damping = damping;
    }

    /** The step, or an empty array where the curvature is not that of a valley. */
    double[] solve() {
      int k = slope.length;
      double[] size = new double[k];
      for (int j = 0; j < k; j++) {
        size[j] = held[j] || curve[j][j] == 0 ? 1 : Math.sqrt(Math.abs(curve[j][j]));
      }
      double[][] factor = new double[k][k];
      for (int a = 0; a < k; a++) {
        for (int b = 0; b <= a; b++) {
          double sum = held[a] || held[b] ? 0 : curve[a][b] / (size[a] * size[b]);
          sum = a == b ? (held[a] ? 1 : sum + damping) : sum;
          for (int c = 0; c < b; c++) {
            sum -= factor[a][c] * factor[b][c];
          }
          if (a == b && !(sum > 1e-14)) {
            return new double[0];
          }
          factor[a][b] = a == b ? Math.sqrt(sum) : sum / factor[b][b];
        }
      }
      return substitute(factor, size);
    }

    private double[] substitute(double[][] factor, double[] size) {
      int k = slope.length;
      double[] step = new double[k];
      for (int a = 0; a < k; a++) {
        step[a] = held[a] ? 0 : -slope[a] / size[a];
        for (int c = 0; c < a; c++) {
          step[a] -= factor[a][c] * step[c];
        }
        step[a] /= factor[a][a];
      }
      for (int a = k - 1; a >= 0; a--) {
        for (int c = a + 1; c < k; c++) {
          step[a] -= factor[c][a] * step[c];
        }
        step[a] /= factor[a][a];
      }
      for (int a = 0; a < k; a++) {
        step[a] /= size[a];
      }
      return step;
    }
  }
}
