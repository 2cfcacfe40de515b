package agro.stats.linear;

import java.util.ArrayList;
import java.util.List;

/**
 * The directions in which a term is tested, as orthonormal rows in the coordinates of the effects
 * of the whole model. One design has them once; each response needs a few products.
 */
final class TermSpace {

  /** For a term that is not tested: why. */
  private final String reason;

  private final double[][] basis;

  private TermSpace(double[][] basis, String reason) {
    this.basis = basis;
    this.reason = reason;
  }

  /** Spaces of all terms of a design that is coded by effects that sum to zero. */
  static List<TermSpace> of(DesignMatrix design, SumsOfSquares kind) {
    var spaces = new ArrayList<TermSpace>();
    for (int t = 0; t < design.terms().size(); t++) {
      spaces.add(
          switch (kind) {
            case SEQUENTIAL -> sequential(design, t);
            case HIERARCHICAL -> adjusted(design, t);
            case MARGINAL -> isContained(design, t) ? hypothesis(design, t) : adjusted(design, t);
          });
    }
    return List.copyOf(spaces);
  }

  private static TermSpace sequential(DesignMatrix design, int term) {
    var rows = new ArrayList<double[]>();
    for (int k = 0; k < design.rank(); k++) {
      if (design.termOfColumn(design.factors().columnAt(k)) == term) {
        double[] unit = new double[design.rank()];
        unit[k] = 1;
        rows.add(unit);
      }
    }
    return new TermSpace(rows.toArray(double[][]::new), "");
  }

  private static boolean isContained(DesignMatrix design, int term) {
    return design.terms().stream().anyMatch(other -> other.contains(design.terms().get(term)));
  }

  /** What the term adds to all terms that do not contain it. */
  private static TermSpace adjusted(DesignMatrix design, int term) {
    var order = new ArrayList<Integer>();
    var own = new ArrayList<Integer>();
    for (int j = 0; j < design.columns(); j++) {
      int t = design.termOfColumn(j);
      if (t == term) {
        own.add(j);
      } else if (t < 0 || !design.terms().get(t).contains(design.terms().get(term))) {
        order.add(j);
      }
    }
    int others = order.size();
    order.addAll(own);
    double[][] columns = new double[order.size()][];
    for (int c = 0; c < columns.length; c++) {
      double[] rotated = design.factors().rotate(design.column(order.get(c)));
      columns[c] = java.util.Arrays.copyOf(rotated, design.rank());
    }
    var partial = PivotedFactors.of(columns, design.rank());
    double[][] q = partial.orthonormalColumns();
    var rows = new ArrayList<double[]>();
    for (int k = 0; k < partial.rank(); k++) {
      if (partial.columnAt(k) >= others) {
        rows.add(q[k]);
      }
    }
    return new TermSpace(rows.toArray(double[][]::new), "");
  }

  /** All coefficients of the term are zero: needs each of them to be estimable. */
  private static TermSpace hypothesis(DesignMatrix design, int term) {
    var functions = new ArrayList<double[]>();
    int estimable = 0;
    int width = 0;
    for (int j = 0; j < design.columns(); j++) {
      if (design.termOfColumn(j) != term) {
        continue;
      }
      double[] function = new double[design.columns()];
      function[j] = 1;
      width++;
      if (design.isEstimable(function)) {
        estimable++;
        functions.add(design.factors().functionInEffects(function));
      }
    }
    if (estimable < width) {
      return new TermSpace(
          new double[0][],
          "not testable: equally weighted means need observations in every cell, and effects of "
              + design.terms().get(term).name()
              + " are mixed with others");
    }
    var rows = PivotedFactors.of(functions.toArray(double[][]::new), design.rank());
    return new TermSpace(rows.orthonormalColumns(), "");
  }

  int degreesOfFreedom() {
    return basis.length;
  }

  String reason() {
    return reason;
  }

  double sumOfSquares(double[] effects) {
    double sum = 0;
    for (double[] row : basis) {
      double product = 0;
      for (int k = 0; k < row.length; k++) {
        product += row[k] * effects[k];
      }
      sum += product * product;
    }
    return sum;
  }
}
