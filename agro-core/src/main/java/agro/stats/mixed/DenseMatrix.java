package agro.stats.mixed;

import java.util.Optional;

/** Arithmetic of small dense symmetric matrices. */
final class DenseMatrix {

  private static final double SINGULAR = 1e-13;

  private DenseMatrix() {}

  /** Inverse of a positive definite matrix and the logarithm of the determinant of the matrix. */
  static final class Inverse {
    private final double[][] inverse;
    private final double logDeterminant;

    Inverse(double[][] inverse, double logDeterminant) {
      this.inverse = inverse;
      this.logDeterminant = logDeterminant;
    }

    double[][] inverse() {
      return inverse;
    }

    double logDeterminant() {
      return logDeterminant;
    }
  }

  /** Nothing when the matrix is not positive definite. */
  static Optional<Inverse> invert(double[][] matrix) {
    int n = matrix.length;
    double[][] lower = new double[n][n];
    double log = 0;
    for (int i = 0; i < n; i++) {
      double[] row = lower[i];
      for (int j = 0; j <= i; j++) {
        double sum = matrix[i][j];
        double[] other = lower[j];
        for (int k = 0; k < j; k++) {
          sum -= row[k] * other[k];
        }
        if (i == j) {
          if (!(sum > SINGULAR * matrix[i][i])) {
            return Optional.empty();
          }
          row[i] = Math.sqrt(sum);
          log += Math.log(sum);
        } else {
          row[j] = sum / other[j];
        }
      }
    }
    return Optional.of(new Inverse(inverse(lower), log));
  }

  private static double[][] inverse(double[][] lower) {
    int n = lower.length;
    // Rows of the transposed inverse of the factor, so that inner loops run along rows.
    double[][] columns = new double[n][n];
    for (int j = 0; j < n; j++) {
      double[] column = columns[j];
      column[j] = 1 / lower[j][j];
      for (int i = j + 1; i < n; i++) {
        double[] row = lower[i];
        double sum = 0;
        for (int k = j; k < i; k++) {
          sum -= row[k] * column[k];
        }
        column[i] = sum / row[i];
      }
    }
    double[][] inverse = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = 0;
        for (int k = i; k < n; k++) {
          sum += columns[i][k] * columns[j][k];
        }
        inverse[i][j] = sum;
        inverse[j][i] = sum;
      }
    }
    return inverse;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  static double[] times(double[][] matrix, double[] vector) {
    double[] product = new double[matrix.length];
    for (int i = 0; i < matrix.length; i++) {
      product[i] = dot(matrix[i], vector);
    }
    return product;
  }

  /** Trace of the product of two matrices. */
  static double traceOfProduct(double[][] a, double[][] b) {
    double trace = 0;
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < b.length; j++) {
        trace += a[i][j] * b[j][i];
      }
    }
    return trace;
  }

  static double trace(double[][] a) {
    double trace = 0;
    for (int i = 0; i < a.length; i++) {
      trace += a[i][i];
    }
    return trace;
  }
}
