package agro.trial.bioassay;

/** Positive definite systems of a few unknowns, some of which may be held. */
final class SmallMatrix {

  private static final double SINGULAR = 1e-13;

  private SmallMatrix() {}

  /** Solves, with zero for held unknowns; null when the rest is not positive definite. */
  static double[] solve(double[][] matrix, double[] right, boolean[] held) {
    var lower = cholesky(matrix, held);
    return lower == null ? null : solveWith(lower, right, held);
  }

  /** Inverse, with zero rows for held unknowns; null when the rest is not positive definite. */
  static double[][] inverse(double[][] matrix, boolean[] held) {
    var lower = cholesky(matrix, held);
    if (lower == null) {
      return null;
    }
    int size = matrix.length;
    var inverse = new double[size][];
    for (int j = 0; j < size; j++) {
      var unit = new double[size];
      unit[j] = held[j] ? 0 : 1;
      inverse[j] = solveWith(lower, unit, held);
    }
    return inverse;
  }

  private static double[][] cholesky(double[][] matrix, boolean[] held) {
    int size = matrix.length;
    var lower = new double[size][size];
    for (int j = 0; j < size; j++) {
      if (held[j]) {
        continue;
      }
      for (int i = j; i < size; i++) {
        if (held[i]) {
          continue;
        }
        double sum = matrix[i][j];
        for (int k = 0; k < j; k++) {
          sum -= lower[i][k] * lower[j][k];
        }
        if (i > j) {
          lower[i][j] = sum / lower[j][j];
        } else if (sum > SINGULAR * matrix[j][j] && Double.isFinite(sum)) {
          lower[j][j] = Math.sqrt(sum);
        } else {
          return null;
        }
      }
    }
    return lower;
  }

  private static double[] solveWith(double[][] lower, double[] right, boolean[] held) {
    int size = right.length;
    var x = new double[size];
    for (int i = 0; i < size; i++) {
      if (!held[i]) {
        double sum = right[i];
        for (int k = 0; k < i; k++) {
          sum -= lower[i][k] * x[k];
        }
        x[i] = sum / lower[i][i];
      }
    }
    for (int i = size - 1; i >= 0; i--) {
      if (!held[i]) {
        double sum = x[i];
        for (int k = i + 1; k < size; k++) {
          sum -= lower[k][i] * x[k];
        }
        x[i] = sum / lower[i][i];
      }
    }
    return x;
  }
}
