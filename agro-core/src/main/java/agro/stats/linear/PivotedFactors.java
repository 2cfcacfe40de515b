package agro.stats.linear;

import java.util.Arrays;

/**
 * A matrix as a product of an orthogonal and a triangular one by Householder reflections, the
 * method of Businger and Golub 1965 with pivoting limited to columns that depend on columns before
 * them: those go to the end, and all others keep their order, so that effects are tested in the
 * order of the terms. Columns are stored one after another.
 */
final class PivotedFactors {

  /** Share of a column's length below which what is left of it counts as rounding. */
  private static final double DEPENDENT = 1e-9;

  private final int rows;
  private final int columns;
  private final int rank;
  private final double[][] work;
  private final double[] diagonal;
  private final int[] order;

  private PivotedFactors(
      int rows, int columns, int rank, double[][] work, double[] diagonal, int[] order) {
    this.rows = rows;
    this.columns = columns;
    this.rank = rank;
    this.work = work;
    this.diagonal = diagonal;
    this.order = order;
  }

  /**
   * Factorises a matrix.
   *
   * @param matrix its columns, which are not changed
   * @param rows length of each column
   */
  static PivotedFactors of(double[][] matrix, int rows) {
    int columns = matrix.length;
    double[][] work = new double[columns][];
    double[] lengths = new double[columns];
    int[] order = new int[columns];
    for (int j = 0; j < columns; j++) {
      work[j] = matrix[j].clone();
      lengths[j] = length(work[j], 0);
      order[j] = j;
    }
    double[] diagonal = new double[columns];
    int rank = 0;
    int end = columns;
    while (rank < end && rank < rows) {
      double left = length(work[rank], rank);
      if (left <= DEPENDENT * lengths[order[rank]]) {
        moveToEnd(work, order, rank);
        end--;
        continue;
      }
      reflect(work, rank, left, diagonal);
      rank++;
    }
    return new PivotedFactors(rows, columns, rank, work, diagonal, order);
  }

  private static void moveToEnd(double[][] work, int[] order, int place) {
    double[] column = work[place];
    int index = order[place];
    System.arraycopy(work, place + 1, work, place, work.length - place - 1);
    System.arraycopy(order, place + 1, order, place, order.length - place - 1);
    work[work.length - 1] = column;
    order[order.length - 1] = index;
  }

  private static void reflect(double[][] work, int step, double left, double[] diagonal) {
    double[] v = work[step];
    double alpha = v[step] > 0 ? -left : left;
    diagonal[step] = alpha;
    v[step] -= alpha;
    double scale = -1 / (alpha * v[step]);
    for (int j = step + 1; j < work.length; j++) {
      apply(v, step, scale, work[j]);
    }
  }

  private static void apply(double[] v, int step, double scale, double[] target) {
    double product = 0;
    for (int i = step; i < v.length; i++) {
      product += v[i] * target[i];
    }
    product *= scale;
    if (product != 0) {
      for (int i = step; i < v.length; i++) {
        target[i] -= product * v[i];
      }
    }
  }

  private static double length(double[] column, int from) {
    double sum = 0;
    for (int i = from; i < column.length; i++) {
      sum += column[i] * column[i];
    }
    return Math.sqrt(sum);
  }

  int rank() {
    return rank;
  }

  int rows() {
    return rows;
  }

  /** Index in the matrix of the column at a place; those from {@link #rank()} on are dependent. */
  int columnAt(int place) {
    return order[place];
  }

  /** The numbers in the coordinates of the orthogonal columns: effects first, then residuals. */
  double[] rotate(double[] values) {
    double[] rotated = values.clone();
    for (int k = 0; k < rank; k++) {
      apply(work[k], k, -1 / (diagonal[k] * work[k][k]), rotated);
    }
    return rotated;
  }

  /** From coordinates of the orthogonal columns back to observations. */
  double[] rotateBack(double[] rotated) {
    double[] values = rotated.clone();
    for (int k = rank - 1; k >= 0; k--) {
      apply(work[k], k, -1 / (diagonal[k] * work[k][k]), values);
    }
    return values;
  }

  /** What is left of the numbers after the projection onto the columns. */
  double[] residuals(double[] values) {
    double[] rotated = rotate(values);
    Arrays.fill(rotated, 0, rank, 0);
    return rotateBack(rotated);
  }

  /** Coefficients by matrix column from rotated numbers; zero for dependent columns. */
  double[] solve(double[] rotated) {
    double[] solution = new double[columns];
    double[] beta = new double[rank];
    for (int k = rank - 1; k >= 0; k--) {
      double sum = rotated[k];
      for (int j = k + 1; j < rank; j++) {
        sum -= work[j][k] * beta[j];
      }
      beta[k] = sum / diagonal[k];
      solution[order[k]] = beta[k];
    }
    return solution;
  }

  /**
   * The linear function of the coefficients in coordinates of the orthogonal columns: its estimate
   * is the product with the effects and its variance the square of its length, both for a function
   * that is estimable.
   */
  double[] functionInEffects(double[] function) {
    double[] z = new double[rank];
    for (int k = 0; k < rank; k++) {
      double sum = function[order[k]];
      for (int j = 0; j < k; j++) {
        sum -= work[k][j] * z[j];
      }
      z[k] = sum / diagonal[k];
    }
    return z;
  }

  /**
   * Directions in which coefficients can move without any fitted value moving, one for each
   * dependent column: 1 at that column, by matrix column.
   */
  double[][] nullDirections() {
    double[][] directions = new double[columns - rank][];
    for (int d = rank; d < columns; d++) {
      double[] top = Arrays.copyOf(work[d], rows);
      double[] direction = solve(top);
      for (int j = 0; j < columns; j++) {
        direction[j] = direction[j] == 0 ? 0 : -direction[j];
      }
      direction[order[d]] = 1;
      directions[d - rank] = direction;
    }
    return directions;
  }

  /** Diagonal of the projection onto the columns. */
  double[] leverages() {
    double[] leverages = new double[rows];
    for (int k = 0; k < rank; k++) {
      double[] unit = new double[rows];
      unit[k] = 1;
      double[] q = rotateBack(unit);
      for (int i = 0; i < rows; i++) {
        leverages[i] += q[i] * q[i];
      }
    }
    return leverages;
  }

  /** Orthonormal columns with the same span as the matrix. */
  double[][] orthonormalColumns() {
    double[][] q = new double[rank][];
    for (int k = 0; k < rank; k++) {
      double[] unit = new double[rows];
      unit[k] = 1;
      q[k] = rotateBack(unit);
    }
    return q;
  }
}
