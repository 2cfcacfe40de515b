package agro.stats.glm;

import org.hipparchus.special.Gamma;

/**
 * Maximum likelihood of the shape of a negative binomial, with the means given or fitted together.
 * Lawless 1987, Canadian Journal of Statistics 15:209-225 (from memory).
 */
final class ShapeSearch {

  /** A likelihood that still rises here belongs to a Poisson as far as counts can tell. */
  private static final double MOST = 1e7;

  private static final int MOST_ITERATIONS = 100;

  private final ScoringProblem problem;
  private final double[] mean;

  private ShapeSearch(ScoringProblem problem, double[] mean) {
    this.problem = problem;
    this.mean = mean;
  }

  /** A fit of means and shape together, in turns. */
  static FittedState fit(PredictorDesign design, ScoringProblem counts, double[] start) {
    var state = FittedState.fit(design, counts.withShape(Double.POSITIVE_INFINITY), start);
    double shape = Double.NaN;
    for (int turn = 0; turn < MOST_ITERATIONS; turn++) {
      double next = new ShapeSearch(state.problem, means(state)).best(shape);
      boolean settled = Math.abs(next - shape) <= 1e-11 * Math.abs(next) || next == shape;
      shape = next;
      if (settled || Double.isInfinite(shape)) {
        break;
      }
      var problem = counts.withShape(shape);
      state = FittedState.fit(design, problem, state.isSeparated() ? start : state.search.beta());
    }
    return state;
  }

  private static double[] means(FittedState state) {
    double[] eta = state.eta();
    double[] means = new double[eta.length];
    for (int i = 0; i < means.length; i++) {
      means[i] = state.problem.link.mean(eta[i]);
    }
    return means;
  }

  static double standardError(FittedState state) {
    double shape = state.problem.shape;
    return 1 / Math.sqrt(-new ShapeSearch(state.problem, means(state)).second(shape));
  }

  /** Newton on the logarithm of the shape, kept between bounds that close in. */
  private double best(double start) {
    double low = Math.log(1e-8);
    double high = Math.log(MOST);
    if (first(MOST) >= 0) {
      return Double.POSITIVE_INFINITY;
    }
    double at = Double.isNaN(start) ? Math.log(moments()) : Math.log(start);
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      double shape = Math.exp(at);
      double slope = shape * first(shape);
      double bend = slope + shape * shape * second(shape);
      if (slope > 0) {
        low = at;
      } else {
        high = at;
      }
      double next = at - slope / bend;
      if (!(bend < 0) || next <= low || next >= high) {
        next = 0.5 * (low + high);
      }
      if (Math.abs(next - at) < 1e-13 * Math.max(1, Math.abs(at))) {
        return Math.exp(next);
      }
      at = next;
    }
    return Math.exp(at);
  }

  private double moments() {
    double sum = 0;
    double n = 0;
    for (int i = 0; i < mean.length; i++) {
      if (mean[i] > 0) {
        double deviation = problem.y[i] / mean[i] - 1;
        sum += problem.weight[i] * deviation * deviation;
        n += problem.weight[i];
      }
    }
    return Math.min(1e4, Math.max(1e-3, n / sum));
  }

  private double first(double shape) {
    double sum = 0;
    for (int i = 0; i < mean.length; i++) {
      double y = problem.y[i];
      double u = rising(shape, y, false) - Math.log1p(mean[i] / shape);
      sum += problem.weight[i] * (u + (mean[i] - y) / (mean[i] + shape));
    }
    return sum;
  }

  private double second(double shape) {
    double sum = 0;
    for (int i = 0; i < mean.length; i++) {
      double y = problem.y[i];
      double whole = mean[i] + shape;
      double bend = -rising(shape, y, true) + mean[i] / (shape * whole);
      sum += problem.weight[i] * (bend - (mean[i] - y) / (whole * whole));
    }
    return sum;
  }

  /** Difference of digammas, or the negative of that of trigammas, as a sum. */
  private static double rising(double shape, double count, boolean squared) {
    if (count > 400 || count != Math.rint(count)) {
      return squared
          ? Gamma.trigamma(shape) - Gamma.trigamma(shape + count)
          : Gamma.digamma(shape + count) - Gamma.digamma(shape);
    }
    double sum = 0;
    for (int j = 0; j < count; j++) {
      double term = 1 / (shape + j);
      sum += squared ? term * term : term;
    }
    return sum;
  }
}
