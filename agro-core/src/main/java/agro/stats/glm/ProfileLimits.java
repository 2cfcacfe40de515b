package agro.stats.glm;

import agro.stats.ConfidenceLimits;

/**
 * Limits of a linear function of coefficients between the values that the likelihood would not
 * reject. They exist on one side where the estimate itself has run away on the other.
 */
final class ProfileLimits {

  private static final int MOST_STEPS = 60;

  private final ScoringProblem problem;
  private final double[] function;
  private final double[] start;
  private final double[] along;
  private final double length;
  private final double best;
  private final double enough;

  private ProfileLimits(FittedState state, double[] function, double enough) {
    this.problem = state.problem;
    this.function = function;
    this.enough = enough;
    Scoring from = state.isSeparated() ? Scoring.run(problem, new double[0], 3) : state.search;
    this.start = from.beta();
    this.along = from.factor().solve(function);
    this.length = product(function, along);
    this.best = state.search.value();
  }

  /**
   * Limits.
   *
   * @param state the fit
   * @param function a function of the problem's coefficients
   * @param enough fall of the log-likelihood, in units of a half, at the limits
   */
  static ConfidenceLimits of(FittedState state, double[] function, double enough) {
    var kind = state.stateOf(function);
    if (kind == EstimateState.UNDETERMINED) {
      return new ConfidenceLimits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    var search = new ProfileLimits(state, function, enough);
    double low =
        kind == EstimateState.MINUS_INFINITY ? Double.NEGATIVE_INFINITY : search.limit(state, -1);
    double high =
        kind == EstimateState.PLUS_INFINITY ? Double.POSITIVE_INFINITY : search.limit(state, 1);
    return new ConfidenceLimits(low, high);
  }

  /** Twice the fall of the log-likelihood when a function is held at a value. */
  static double fall(FittedState state, double[] function, double value) {
    double root = new ProfileLimits(state, function, 0).excess(value);
    return root * root;
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int j = 0; j < a.length; j++) {
      sum += a[j] * b[j];
    }
    return sum;
  }

  /** Distance of the root of the fall from the root of what is enough; it rises outwards. */
  private double excess(double value) {
    double shift = (value - product(function, start)) / length;
    double[] moved = start.clone();
    for (int j = 0; j < moved.length; j++) {
      moved[j] += shift * along[j];
    }
    double reached = Scoring.holding(function, problem, moved).value();
    return Math.sqrt(Math.max(0, 2 * (best - reached))) - Math.sqrt(enough);
  }

  private double limit(FittedState state, int side) {
    double centre = centre(state);
    double width = Math.sqrt(length * enough);
    double inner = centre;
    double outer = centre + side * width;
    double innerExcess = excess(inner);
    if (innerExcess > 0) {
      for (int step = 0; step < MOST_STEPS && innerExcess > 0; step++) {
        outer = inner;
        inner -= side * width;
        innerExcess = excess(inner);
      }
    }
    double outerExcess = excess(outer);
    for (int step = 0; step < MOST_STEPS && !(outerExcess > 0); step++) {
      inner = outer;
      innerExcess = outerExcess;
      outer += side * width * (1 << Math.min(step, 12)) / 2;
      outerExcess = excess(outer);
      if (Math.abs(outer) > 1e6 * (1 + Math.abs(centre))) {
        return side * Double.POSITIVE_INFINITY;
      }
    }
    return outerExcess > 0 ? between(inner, innerExcess, outer, outerExcess) : side / 0.0;
  }

  private double centre(FittedState state) {
    double sum = product(function, start);
    double[] beta = state.problemBeta();
    double exact = 0;
    for (int j = 0; j < beta.length; j++) {
      exact += function[j] == 0 ? 0 : function[j] * beta[j];
    }
    return Double.isNaN(exact) ? sum : exact;
  }

  /** False position that halves the stale end, after Dowell and Jarratt 1971. */
  private double between(double low, double atLow, double high, double atHigh) {
    double a = low;
    double b = high;
    double fa = atLow;
    double fb = atHigh;
    for (int i = 0; i < MOST_STEPS && Math.abs(b - a) > 1e-10 * (1 + Math.abs(b)); i++) {
      double c = b - fb * (b - a) / (fb - fa);
      double fc = excess(c);
      if (fc == 0) {
        return c;
      }
      if ((fc > 0) != (fb > 0)) {
        a = b;
        fa = fb;
      } else {
        fa /= 2;
      }
      b = c;
      fb = fc;
    }
    return b;
  }
}
