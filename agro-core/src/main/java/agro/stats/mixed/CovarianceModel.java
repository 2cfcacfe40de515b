package agro.stats.mixed;

import java.util.List;
import java.util.Optional;

/**
 * Covariance of the observations as a function of its parameters: one variance for each random
 * term, the residual variance, and the correlation within subjects where there is one.
 */
final class CovarianceModel {

  static final double LARGEST_CORRELATION = 0.9999;

  private final int n;
  private final List<BlockOperator> random;
  private final Optional<WithinSubject> within;
  private final BlockOperator identity;

  CovarianceModel(int n, List<BlockOperator> random, Optional<WithinSubject> within) {
    this.n = n;
    this.random = random;
    this.within = within;
    this.identity = BlockOperator.identity(n);
  }

  int size() {
    return n;
  }

  int parameters() {
    return random.size() + 1 + (within.isPresent() ? 1 : 0);
  }

  /** Place of the residual variance; random terms stand before it, the correlation after it. */
  int residualAt() {
    return random.size();
  }

  boolean isCorrelation(int parameter) {
    return parameter > residualAt();
  }

  BlockOperator random(int term) {
    return random.get(term);
  }

  double[][] matrix(double[] parameters) {
    double[][] matrix = new double[n][n];
    for (int k = 0; k < random.size(); k++) {
      random.get(k).addTo(matrix, parameters[k]);
    }
    residual(parameters, 0).addTo(matrix, parameters[residualAt()]);
    return matrix;
  }

  private BlockOperator residual(double[] parameters, int derivative) {
    return within
        .map(each -> each.matrix(parameters[residualAt() + 1], derivative))
        .orElse(identity);
  }

  /** Derivative of the matrix by one parameter, with the factor that belongs before it. */
  Derivative derivative(int parameter, double[] parameters) {
    if (parameter < residualAt()) {
      return new Derivative(1, random.get(parameter));
    }
    return isCorrelation(parameter)
        ? new Derivative(parameters[residualAt()], residual(parameters, 1))
        : new Derivative(1, residual(parameters, 0));
  }

  /** Second derivative by two parameters; nothing where it is zero. */
  Optional<Derivative> secondDerivative(int one, int other, double[] parameters) {
    if (isCorrelation(one) && isCorrelation(other)) {
      return Optional.of(new Derivative(parameters[residualAt()], residual(parameters, 2)));
    }
    int smaller = Math.min(one, other);
    return isCorrelation(Math.max(one, other)) && smaller == residualAt()
        ? Optional.of(new Derivative(1, residual(parameters, 1)))
        : Optional.empty();
  }

  /**
   * A multiple of a matrix.
   *
   * @param scale the factor
   * @param operator the matrix
   */
  record Derivative(double scale, BlockOperator operator) {
    double[] times(double[] vector) {
      return scaled(operator.times(vector));
    }

    double[][] leftTimes(double[][] matrix) {
      double[][] product = operator.leftTimes(matrix);
      if (scale != 1) {
        for (double[] row : product) {
          scaled(row);
        }
      }
      return product;
    }

    private double[] scaled(double[] row) {
      for (int i = 0; i < row.length; i++) {
        row[i] *= scale;
      }
      return row;
    }
  }
}
