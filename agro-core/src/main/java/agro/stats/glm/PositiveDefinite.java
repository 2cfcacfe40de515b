package agro.stats.glm;

/** Cholesky's factor of a symmetric matrix, each row and column first scaled to unit diagonal. */
final class PositiveDefinite {

  private static final double SINGULAR = 1e-13;

  private final int size;
  private final double[] factor;
  private final double[] scale;
  private final boolean regular;

  private PositiveDefinite(int size, double[] factor, double[] scale, boolean regular) {
    this.size = size;
    this.factor = factor;
    this.scale = scale;
    this.regular = regular;
  }

  /**
   * Factors a matrix of which the lower triangle is filled.
   *
   * @param matrix element of row a and column b at {@code a * size + b}; left as it is
   * @param size number of rows
   */
  static PositiveDefinite of(double[] matrix, int size) {
    double[] scale = new double[size];
    boolean regular = true;
    for (int a = 0; a < size; a++) {
      double diagonal = matrix[a * size + a];
      regular &= diagonal > 0 && diagonal < Double.POSITIVE_INFINITY;
      scale[a] = 1 / Math.sqrt(diagonal);
    }
    double[] factor = new double[size * size];
    for (int a = 0; a < size && regular; a++) {
      for (int b = 0; b <= a; b++) {
        double sum = matrix[a * size + b] * scale[a] * scale[b];
        for (int c = 0; c < b; c++) {
          sum -= factor[a * size + c] * factor[b * size + c];
        }
        if (a != b) {
          factor[a * size + b] = sum / factor[b * size + b];
        } else if (sum > SINGULAR) {
          factor[a * size + a] = Math.sqrt(sum);
        } else {
          regular = false;
        }
      }
    }
    return new PositiveDefinite(size, factor, scale, regular);
  }

  /** Whether the matrix is positive definite as far as doubles can tell. */
  boolean isRegular() {
    return regular;
  }

  /** The matrix inverted, times a vector. */
  double[] solve(double[] right) {
    double[] x = new double[size];
    for (int a = 0; a < size; a++) {
      x[a] = right[a] * scale[a];
    }
    forward(x);
    for (int a = size - 1; a >= 0; a--) {
      for (int c = a + 1; c < size; c++) {
        x[a] -= factor[c * size + a] * x[c];
      }
      x[a] /= factor[a * size + a];
    }
    for (int a = 0; a < size; a++) {
      x[a] *= scale[a];
    }
    return x;
  }

  private void forward(double[] x) {
    for (int a = 0; a < size; a++) {
      for (int c = 0; c < a; c++) {
        x[a] -= factor[a * size + c] * x[c];
      }
      x[a] /= factor[a * size + a];
    }
  }

  /** A vector on both sides of the inverse: its variance when the matrix is an information. */
  double quadratic(double[] vector, int from) {
    double[] x = new double[size];
    for (int a = 0; a < size; a++) {
      x[a] = vector[from + a] * scale[a];
    }
    forward(x);
    double sum = 0;
    for (double each : x) {
      sum += each * each;
    }
    return sum;
  }

  /** The inverse, symmetric. */
  double[] inverse() {
    double[] inverse = new double[size * size];
    double[] unit = new double[size];
    for (int a = 0; a < size; a++) {
      unit[a] = 1;
      double[] column = solve(unit);
      unit[a] = 0;
      System.arraycopy(column, 0, inverse, a * size, size);
    }
    return inverse;
  }

  /** Natural logarithm of the determinant. */
  double logDeterminant() {
    double sum = 0;
    for (int a = 0; a < size; a++) {
      sum += Math.log(factor[a * size + a]) - Math.log(scale[a]);
    }
    return 2 * sum;
  }
}
