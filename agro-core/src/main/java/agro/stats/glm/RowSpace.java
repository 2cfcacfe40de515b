package agro.stats.glm;

import java.util.Arrays;

/**
 * Which columns of a matrix tell something new beside those to their left, and which linear
 * functions of coefficients its rows determine.
 */
final class RowSpace {

  private static final double SMALL = 1e-9;

  private final int columns;
  private final int[] pivots;
  private final double[][] nullBasis;

  private RowSpace(int columns, int[] pivots, double[][] nullBasis) {
    this.columns = columns;
    this.pivots = pivots;
    this.nullBasis = nullBasis;
  }

  /**
   * Looks at a matrix.
   *
   * @param x element of row i and column j at i * columns + j
   * @param rows number of rows
   * @param columns number of columns
   */
  static RowSpace of(double[] x, int rows, int columns) {
    double[][] unit = new double[columns][];
    double[][] upper = new double[columns][columns];
    int[] pivots = new int[columns];
    int rank = 0;
    double[][] nulls = new double[columns][];
    int free = 0;
    for (int j = 0; j < columns; j++) {
      double[] column = column(x, rows, columns, j);
      double length = length(column);
      double[] parts = new double[columns];
      for (int pass = 0; pass < 2; pass++) {
        for (int k = 0; k < rank; k++) {
          double part = product(unit[k], column);
          parts[k] += part;
          for (int i = 0; i < rows; i++) {
            column[i] -= part * unit[k][i];
          }
        }
      }
      double rest = length(column);
      if (rest > SMALL * length) {
        for (int i = 0; i < rows; i++) {
          column[i] /= rest;
        }
        parts[rank] = rest;
        upper[rank] = parts;
        unit[rank] = column;
        pivots[rank++] = j;
      } else {
        nulls[free++] = dependence(upper, parts, pivots, rank, j, columns);
      }
    }
    return new RowSpace(columns, Arrays.copyOf(pivots, rank), Arrays.copyOf(nulls, free));
  }

  private static double[] dependence(
      double[][] upper, double[] parts, int[] pivots, int rank, int j, int columns) {
    double[] weights = new double[rank];
    for (int a = rank - 1; a >= 0; a--) {
      double sum = parts[a];
      for (int b = a + 1; b < rank; b++) {
        sum -= upper[b][a] * weights[b];
      }
      weights[a] = sum / upper[a][a];
    }
    double[] direction = new double[columns];
    direction[j] = 1;
    for (int a = 0; a < rank; a++) {
      direction[pivots[a]] = Math.abs(weights[a]) < SMALL ? 0 : -weights[a];
    }
    return direction;
  }

  private static double[] column(double[] x, int rows, int columns, int j) {
    double[] column = new double[rows];
    for (int i = 0; i < rows; i++) {
      column[i] = x[i * columns + j];
    }
    return column;
  }

  private static double length(double[] vector) {
    return Math.sqrt(product(vector, vector));
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  int rank() {
    return pivots.length;
  }

  /** Places of the columns that are kept. */
  int[] pivots() {
    return pivots;
  }

  /** Directions along which no row changes, one for each column that is not kept. */
  double[][] nullBasis() {
    return nullBasis;
  }

  /** Whether the rows determine a linear function of the coefficients. */
  boolean determines(double[] function) {
    double size = 0;
    for (double each : function) {
      size = Math.max(size, Math.abs(each));
    }
    for (double[] direction : nullBasis) {
      double sum = 0;
      double terms = 0;
      for (int j = 0; j < columns; j++) {
        sum += direction[j] * function[j];
        terms += Math.abs(direction[j] * function[j]);
      }
      if (Math.abs(sum) > 1e-7 * Math.max(size, terms)) {
        return false;
      }
    }
    return true;
  }
}
