package agro.stats.mixed;

import java.util.Optional;

/** Likelihood of a mixed model at given parameters of its covariance, with what follows from it. */
final class LikelihoodPoint {

  private final CovarianceModel covariance;
  private final LikelihoodKind kind;
  private final double[] parameters;
  private final double logLikelihood;
  private final double[] coefficients;
  private final double[][] coefficientCovariance;
  private final double[][] weighted;
  private final double[][] projection;
  private final double[][] inverse;
  private final double[] projected;

  private LikelihoodPoint(
      CovarianceModel covariance,
      double[][] columns,
      double[] response,
      LikelihoodKind kind,
      double[] parameters,
      DenseMatrix.Inverse total,
      DenseMatrix.Inverse fixed,
      double[][] weighted) {
    this.covariance = covariance;
    this.kind = kind;
    this.parameters = parameters.clone();
    this.weighted = weighted;
    this.inverse = total.inverse();
    this.coefficientCovariance = fixed.inverse();
    int n = response.length;
    int p = columns.length;
    double[] products = new double[p];
    for (int j = 0; j < p; j++) {
      products[j] = DenseMatrix.dot(weighted[j], response);
    }
    coefficients = DenseMatrix.times(coefficientCovariance, products);
    projection = project();
    projected = DenseMatrix.times(projection, response);
    double square = DenseMatrix.dot(projected, response);
    boolean restricted = kind == LikelihoodKind.RESTRICTED;
    double constants = (restricted ? n - p : n) * Math.log(2 * Math.PI);
    logLikelihood =
        -0.5
            * (constants
                + total.logDeterminant()
                + (restricted ? fixed.logDeterminant() : 0)
                + square);
  }

  /** Nothing where the covariance is not positive definite. */
  static Optional<LikelihoodPoint> at(
      CovarianceModel covariance,
      double[][] columns,
      double[] response,
      LikelihoodKind kind,
      double[] parameters) {
    return DenseMatrix.invert(covariance.matrix(parameters))
        .flatMap(
            total -> {
              int p = columns.length;
              double[][] weighted = new double[p][];
              double[][] normal = new double[p][p];
              for (int j = 0; j < p; j++) {
                weighted[j] = DenseMatrix.times(total.inverse(), columns[j]);
              }
              for (int i = 0; i < p; i++) {
                for (int j = 0; j < p; j++) {
                  normal[i][j] = DenseMatrix.dot(columns[i], weighted[j]);
                }
              }
              return DenseMatrix.invert(normal)
                  .map(
                      fixed ->
                          new LikelihoodPoint(
                              covariance,
                              columns,
                              response,
                              kind,
                              parameters,
                              total,
                              fixed,
                              weighted));
            });
  }

  /** V⁻¹ - V⁻¹X (X'V⁻¹X)⁻¹ X'V⁻¹. */
  private double[][] project() {
    int n = inverse.length;
    int p = weighted.length;
    double[][] result = new double[n][];
    for (int i = 0; i < n; i++) {
      double[] row = inverse[i].clone();
      for (int a = 0; a < p; a++) {
        double factor = 0;
        for (int b = 0; b < p; b++) {
          factor += weighted[b][i] * coefficientCovariance[b][a];
        }
        double[] column = weighted[a];
        for (int j = 0; j < n; j++) {
          row[j] -= factor * column[j];
        }
      }
      result[i] = row;
    }
    return result;
  }

  double logLikelihood() {
    return logLikelihood;
  }

  double[] parameters() {
    return parameters.clone();
  }

  double[] coefficients() {
    return coefficients.clone();
  }

  double[][] coefficientCovariance() {
    return coefficientCovariance;
  }

  double[] projected() {
    return projected;
  }

  double[][] projection() {
    return projection;
  }

  /** First derivatives and information of the parameters. */
  Slope slope() {
    int q = covariance.parameters();
    double[][] base = kind == LikelihoodKind.RESTRICTED ? projection : inverse;
    var products = new double[q][][];
    var images = new double[q][];
    double[] score = new double[q];
    for (int k = 0; k < q; k++) {
      var derivative = covariance.derivative(k, parameters);
      products[k] = derivative.leftTimes(base);
      images[k] = derivative.times(projected);
      score[k] = -0.5 * (DenseMatrix.trace(products[k]) - DenseMatrix.dot(images[k], projected));
    }
    double[][] expected = new double[q][q];
    double[][] observed = new double[q][q];
    for (int k = 0; k < q; k++) {
      double[] through = DenseMatrix.times(projection, images[k]);
      for (int l = 0; l <= k; l++) {
        double trace = 0.5 * DenseMatrix.traceOfProduct(products[k], products[l]);
        double square = DenseMatrix.dot(through, images[l]);
        expected[k][l] = trace;
        observed[k][l] = square - trace + curvature(k, l, base);
        expected[l][k] = expected[k][l];
        observed[l][k] = observed[k][l];
      }
    }
    return new Slope(score, expected, observed);
  }

  private double curvature(int k, int l, double[][] base) {
    return covariance
        .secondDerivative(k, l, parameters)
        .map(
            second ->
                0.5
                    * (DenseMatrix.trace(second.leftTimes(base))
                        - DenseMatrix.dot(second.times(projected), projected)))
        .orElse(0.0);
  }

  /** Derivatives of the variance of a combination of coefficients by the parameters. */
  double[] varianceSlopes(double[] function) {
    double[] through = DenseMatrix.times(coefficientCovariance, function);
    int n = inverse.length;
    double[] weights = new double[n];
    for (int a = 0; a < through.length; a++) {
      for (int i = 0; i < n; i++) {
        weights[i] += through[a] * weighted[a][i];
      }
    }
    double[] slopes = new double[covariance.parameters()];
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] = DenseMatrix.dot(covariance.derivative(k, parameters).times(weights), weights);
    }
    return slopes;
  }

  /** First derivatives, and minus the second ones expected and observed. */
  static final class Slope {
    final double[] score;
    final double[][] expected;
    final double[][] observed;

    Slope(double[] score, double[][] expected, double[][] observed) {
      this.score = score;
      this.expected = expected;
      this.observed = observed;
    }
  }
}
