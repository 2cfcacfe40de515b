package agro.generation;

/** Cholesky's method on the lower triangle of a small symmetric matrix, in place. */
final class Cholesky {

  private Cholesky() {}

  /**
   * Solves {@code A x = b}.
   *
   * @param matrix lower triangle of A; receives its factor
   * @param right b; receives x
   * @return false when A is not positive definite
   */
  static boolean solve(double[][] matrix, double[] right) {
    if (!factor(matrix)) {
      return false;
    }
    for (var i = 0; i < right.length; i++) {
      for (var k = 0; k < i; k++) {
        right[i] -= matrix[i][k] * right[k];
      }
      right[i] /= matrix[i][i];
    }
    for (var i = right.length - 1; i >= 0; i--) {
      for (var k = i + 1; k < right.length; k++) {
        right[i] -= matrix[k][i] * right[k];
      }
      right[i] /= matrix[i][i];
    }
    return true;
  }

  /**
   * Logarithm of the determinant of A.
   *
   * @param matrix lower triangle of A; receives its factor
   * @return NaN when A is not positive definite
   */
  static double logDeterminant(double[][] matrix) {
    if (!factor(matrix)) {
      return Double.NaN;
    }
    var sum = 0.0;
    for (var i = 0; i < matrix.length; i++) {
      sum += 2 * Math.log(matrix[i][i]);
    }
    return sum;
  }

  private static boolean factor(double[][] matrix) {
    for (var i = 0; i < matrix.length; i++) {
      for (var j = 0; j <= i; j++) {
        var sum = matrix[i][j];
        for (var k = 0; k < j; k++) {
          sum -= matrix[i][k] * matrix[j][k];
        }
        if (i == j) {
          if (!(sum > 1e-300)) {
            return false;
          }
          matrix[i][i] = Math.sqrt(sum);
        } else {
          matrix[i][j] = sum / matrix[j][j];
        }
      }
    }
    return true;
  }
}
