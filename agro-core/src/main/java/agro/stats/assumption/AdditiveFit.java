package agro.stats.assumption;

import agro.stats.BlockedValues;
import java.util.ArrayList;
import java.util.List;

/**
 * Least squares fit of block and treatment effects to the plots that are present. The effects span
 * a space of orthonormal columns, so that unconnected tables lose their degrees of freedom by
 * themselves.
 */
final class AdditiveFit {

  private static final double DEPENDENT = 1e-9;

  private final double[] values;
  private final List<double[]> basis;

  private AdditiveFit(double[] values, List<double[]> basis) {
    this.values = values;
    this.basis = basis;
  }

  static AdditiveFit of(BlockedValues table) {
    int n = table.present();
    int blocks = table.blocks().size();
    int treatments = table.treatments().size();
    double[] values = new double[n];
    double[][] columns = new double[blocks + treatments][n];
    int at = 0;
    for (int block = 0; block < blocks; block++) {
      for (int treatment = 0; treatment < treatments; treatment++) {
        if (table.has(block, treatment)) {
          values[at] = table.value(block, treatment);
          columns[block][at] = 1;
          columns[blocks + treatment][at] = 1;
          at++;
        }
      }
    }
    var basis = new ArrayList<double[]>();
    for (double[] column : columns) {
      double length = Math.sqrt(dot(column, column));
      // Twice is enough: the second pass takes out what rounding left in the first.
      subtractProjection(basis, column);
      subtractProjection(basis, column);
      double left = Math.sqrt(dot(column, column));
      if (left > DEPENDENT * length) {
        for (int i = 0; i < n; i++) {
          column[i] /= left;
        }
        basis.add(column);
      }
    }
    return new AdditiveFit(values, basis);
  }

  private static void subtractProjection(List<double[]> basis, double[] column) {
    for (double[] direction : basis) {
      double along = dot(direction, column);
      for (int i = 0; i < column.length; i++) {
        column[i] -= along * direction[i];
      }
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  double[] values() {
    return values;
  }

  double mean() {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  double[] residuals(double[] response) {
    double[] left = response.clone();
    subtractProjection(basis, left);
    subtractProjection(basis, left);
    return left;
  }

  int residualDf() {
    return values.length - basis.size();
  }
}
