package agro.stats.glm;

/** Numbers that describe a fit as a whole and each of its rows. */
final class FitMeasures {

  private static final double EDGE = 1e-6;

  private final FittedState state;
  private final ScoringProblem problem;
  private final double[] eta;

  FitMeasures(FittedState state) {
    this.state = state;
    this.problem = state.problem;
    this.eta = state.eta();
  }

  double[] eta() {
    return eta;
  }

  double mean(int i) {
    return problem.link.mean(eta[i]);
  }

  private boolean isAtLimit(int i) {
    return Double.isInfinite(eta[i]);
  }

  /** Whether a link that does not keep means in their range has led one to its edge. */
  boolean isAtEdge() {
    boolean proportions = problem.scatter == BinomialScatter.INSTANCE;
    boolean keeps =
        problem.link.isForProportions() || (problem.link == LinkFunction.LOG && !proportions);
    for (int i = 0; i < eta.length && !keeps; i++) {
      boolean low = problem.link == LinkFunction.IDENTITY && mean(i) < EDGE;
      boolean high = proportions && problem.link.complement(eta[i]) < EDGE;
      if ((low || high) && !isAtLimit(i)) {
        return true;
      }
    }
    return false;
  }

  double deviance(int i) {
    return isAtLimit(i)
        ? 0
        : Math.max(
            0,
            problem.scatter.deviance(
                problem.y[i],
                problem.total[i],
                mean(i),
                problem.link.complement(eta[i]),
                problem.shape));
  }

  double pearson(int i) {
    if (isAtLimit(i)) {
      return 0;
    }
    double variance =
        problem.scatter.variance(mean(i), problem.link.complement(eta[i]), problem.shape);
    return response(i) / Math.sqrt(variance * problem.total[i]);
  }

  double response(int i) {
    return isAtLimit(i) ? 0 : problem.y[i] - problem.total[i] * mean(i);
  }

  double deviance() {
    double sum = 0;
    for (int i = 0; i < eta.length; i++) {
      sum += problem.weight[i] * deviance(i);
    }
    return sum;
  }

  double pearsonSum() {
    double sum = 0;
    for (int i = 0; i < eta.length; i++) {
      double each = pearson(i);
      sum += problem.weight[i] * each * each;
    }
    return sum;
  }

  double kernel() {
    return state.reduced.kernel(state.search.eta());
  }

  int residualDegreesOfFreedom() {
    int rows = 0;
    for (double w : state.reduced.weight) {
      rows += w > 0 ? 1 : 0;
    }
    return rows - state.reduced.columns;
  }

  double logLikelihood(ErrorFamily family) {
    if (family != ErrorFamily.GAMMA) {
      return kernel() + state.constant();
    }
    double units = 0;
    for (double w : problem.weight) {
      units += w;
    }
    double shape = units / deviance();
    return shape * kernel() + state.problem.withShape(shape).constantSum();
  }

  double[] leverages() {
    double[] leverages = new double[eta.length];
    var reduced = state.reduced;
    for (int i = 0; i < reduced.rows; i++) {
      double weight = reduced.expectedWeight(i, state.search.eta()[i]);
      leverages[state.keptRows[i]] =
          weight * state.search.factor().quadratic(reduced.x, i * reduced.columns);
    }
    return leverages;
  }

  double residual(int i, ResidualKind kind, double leverage, double dispersion) {
    double root = Math.sqrt(problem.weight[i]);
    double free = Math.sqrt(dispersion * (1 - leverage));
    return switch (kind) {
      case DEVIANCE -> Math.copySign(root * Math.sqrt(deviance(i)), response(i));
      case PEARSON -> root * pearson(i);
      case RESPONSE -> response(i);
      case STANDARDISED_DEVIANCE ->
          free > 1e-7 ? Math.copySign(root * Math.sqrt(deviance(i)), response(i)) / free : 0;
      case STANDARDISED_PEARSON -> free > 1e-7 ? root * pearson(i) / free : 0;
    };
  }
}
