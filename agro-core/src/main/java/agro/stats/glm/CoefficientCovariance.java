package agro.stats.glm;

/** Covariance of the coefficients that the rows determine, for a dispersion of one. */
final class CoefficientCovariance {

  private final double[] matrix;
  private final int size;
  private final boolean known;

  private CoefficientCovariance(double[] matrix, int size, boolean known) {
    this.matrix = matrix;
    this.size = size;
    this.known = known;
  }

  static CoefficientCovariance of(
      FittedState state, InformationKind kind, boolean shapeIsEstimated) {
    int k = state.reduced.columns;
    var factor = state.search.factor();
    if (kind == InformationKind.OBSERVED) {
      factor = PositiveDefinite.of(observed(state, shapeIsEstimated), k);
    }
    return factor.isRegular()
        ? new CoefficientCovariance(factor.inverse(), k, true)
        : new CoefficientCovariance(new double[0], k, k == 0);
  }

  private static double[] observed(FittedState state, boolean shapeIsEstimated) {
    var problem = state.reduced;
    double[] eta = state.search.eta();
    double[] weights = new double[problem.rows];
    for (int i = 0; i < problem.rows; i++) {
      weights[i] = problem.observedWeight(i, eta[i]);
    }
    double[] information = problem.information(weights);
    if (shapeIsEstimated && !Double.isInfinite(problem.shape)) {
      takeOffShape(state, information);
    }
    return information;
  }

  /** What the shape takes of the information, because it is estimated too. */
  private static void takeOffShape(FittedState state, double[] information) {
    var problem = state.reduced;
    int k = problem.columns;
    double[] cross = new double[k];
    for (int i = 0; i < problem.rows; i++) {
      double eta = state.search.eta()[i];
      double mean = problem.link.mean(eta);
      double whole = mean + problem.shape;
      double each =
          problem.weight[i] * problem.link.slope(eta) * (problem.y[i] - mean) / (whole * whole);
      for (int j = 0; j < k; j++) {
        cross[j] += each * problem.x[i * k + j];
      }
    }
    double error = ShapeSearch.standardError(state);
    for (int a = 0; a < k; a++) {
      for (int b = 0; b <= a; b++) {
        information[a * k + b] -= cross[a] * cross[b] * error * error;
      }
    }
  }

  boolean isKnown() {
    return known;
  }

  double between(double[] one, double[] other) {
    double sum = 0;
    for (int a = 0; a < size; a++) {
      for (int b = 0; b < size; b++) {
        sum += one[a] * matrix[a * size + b] * other[b];
      }
    }
    return sum;
  }
}
