package agro.development.rate;

import agro.stats.Conditioning;

/** Standard errors and conditioning of parameters, by derivatives in the paper's own parameters. */
final class FittedParameters {

  private static final int POINTS = DerivedPoint.values().length;
  private static final double STEP = 1e-6;

  private final RateEquation equation;
  private final RateModel model;
  private final ArrheniusConstants constants;
  private final PointResiduals points;
  private final int[] free;

  FittedParameters(RateFitting fitting, PointResiduals points) {
    equation = fitting.equation();
    model = fitting.model();
    constants = fitting.constants();
    this.points = points;
    int k = equation.parameters().size();
    free = new int[fitting.freeParameters()];
    for (int j = 0, at = 0; j < k; j++) {
      if (!fitting.fixed().containsKey(j)) {
        free[at++] = j;
      }
    }
  }

  int[] free() {
    return free.clone();
  }

  /** Conditioning of the free parameters at a point. */
  Conditioning conditioning(double[] p) {
    int n = points.observations();
    int k = free.length;
    double[] jacobian = new double[n * k];
    for (int j = 0; j < k; j++) {
      double h = step(p[free[j]]);
      double[] up = moved(p, free[j], h);
      double[] down = moved(p, free[j], -h);
      for (int i = 0; i < n; i++) {
        jacobian[i * k + j] =
            points.root[i] * (points.fitted(i, up) - points.fitted(i, down)) / (2 * h);
      }
    }
    return Conditioning.of(jacobian, n, k);
  }

  private static double step(double value) {
    return STEP * Math.max(Math.abs(value), 1e-4);
  }

  private double[] moved(double[] p, int place, double by) {
    double[] q = p.clone();
    q[place] += by;
    return equation.toSearch(q, constants);
  }

  /**
   * Standard errors of all parameters and derived points; 0 for fixed ones, NaN for missing ones.
   */
  double[] standardErrors(double[] p, Conditioning conditioning, double deviation) {
    double[] errors = new double[p.length + POINTS];
    for (int a = 0; a < free.length; a++) {
      errors[free[a]] = deviation * Math.sqrt(conditioning.covariance(a, a));
    }
    double[][] slopes = new double[free.length][];
    for (int a = 0; a < free.length; a++) {
      double h = step(p[free[a]]);
      slopes[a] = derived(p, free[a], h);
      double[] down = derived(p, free[a], -h);
      for (int d = 0; d < POINTS; d++) {
        slopes[a][d] = (slopes[a][d] - down[d]) / (2 * h);
      }
    }
    for (int d = 0; d < POINTS; d++) {
      double sum = 0;
      for (int a = 0; a < free.length; a++) {
        for (int b = 0; b < free.length; b++) {
          sum += slopes[a][d] * slopes[b][d] * conditioning.covariance(a, b);
        }
      }
      errors[p.length + d] = deviation * Math.sqrt(sum);
    }
    return errors;
  }

  private double[] derived(double[] p, int place, double by) {
    double[] q = p.clone();
    q[place] += by;
    double[] values = new double[POINTS];
    new CurvePoints(model.equation(), q, constants).into(model, values, 0);
    return values;
  }
}
