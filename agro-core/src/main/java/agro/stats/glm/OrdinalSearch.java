package agro.stats.glm;

import java.util.Arrays;

/**
 * Newton's method for a cumulative link model: P(class at most j) = F(cut j - predictor). The
 * log-likelihood is concave for these links (Pratt 1981, Journal of the American Statistical
 * Association 76:103-106; from memory).
 */
final class OrdinalSearch {

  private static final int MOST_ITERATIONS = 100;
  private static final double TOLERANCE = 1e-20;

  final OrdinalScores scores;
  final double[] x;
  final int columns;
  final int cuts;
  final LinkFunction link;

  private double[] parameters;
  private double value;
  private PositiveDefinite factor;
  private boolean converged;
  private int iterations;

  private OrdinalSearch(OrdinalScores scores, double[] x, int columns, LinkFunction link) {
    this.scores = scores;
    this.x = x;
    this.columns = columns;
    this.cuts = scores.classes().size() - 1;
    this.link = link;
  }

  /** Fits; parameters are the cut points and then the coefficients of the columns. */
  static OrdinalSearch run(OrdinalScores scores, double[] x, int columns, LinkFunction link) {
    var search = new OrdinalSearch(scores, x, columns, link);
    search.begin();
    search.climb();
    return search;
  }

  double[] parameters() {
    return parameters;
  }

  double logLikelihood() {
    return value;
  }

  PositiveDefinite factor() {
    return factor;
  }

  boolean converged() {
    return converged;
  }

  int iterations() {
    return iterations;
  }

  private void begin() {
    double[] count = new double[cuts + 1];
    double all = 0;
    for (int i = 0; i < scores.size(); i++) {
      count[scores.code(i)] += scores.frequency(i);
      all += scores.frequency(i);
    }
    parameters = new double[cuts + columns];
    double below = 0;
    for (int j = 0; j < cuts; j++) {
      below += count[j];
      parameters[j] = link.eta(below / all);
    }
    value = logLikelihood(parameters);
  }

  double predictor(double[] at, int row) {
    double sum = 0;
    for (int j = 0; j < columns; j++) {
      sum += x[row * columns + j] * at[cuts + j];
    }
    return sum;
  }

  /** Chance of a class between two bounds of the latent scale. */
  double between(double low, double high) {
    return low > 0
        ? link.complement(low) - link.complement(high)
        : link.mean(high) - link.mean(low);
  }

  double low(double[] at, int code) {
    return code == 0 ? Double.NEGATIVE_INFINITY : at[code - 1];
  }

  double high(double[] at, int code) {
    return code == cuts ? Double.POSITIVE_INFINITY : at[code];
  }

  private double logLikelihood(double[] at) {
    for (int j = 1; j < cuts; j++) {
      if (!(at[j] > at[j - 1])) {
        return Double.NEGATIVE_INFINITY;
      }
    }
    double sum = 0;
    for (int i = 0; i < scores.size(); i++) {
      if (scores.frequency(i) > 0) {
        double eta = predictor(at, i);
        double p = between(low(at, scores.code(i)) - eta, high(at, scores.code(i)) - eta);
        sum += scores.frequency(i) * Math.log(p);
      }
    }
    return Double.isNaN(sum) ? Double.NEGATIVE_INFINITY : sum;
  }

  private double slopeAt(double eta) {
    return Double.isInfinite(eta) ? 0 : link.slope(eta);
  }

  private double curvatureAt(double eta) {
    return Double.isInfinite(eta) ? 0 : link.curvature(eta);
  }

  private void climb() {
    double[] slope = new double[parameters.length];
    differentiate(slope);
    while (!converged && iterations < MOST_ITERATIONS && factor.isRegular()) {
      iterations++;
      double[] step = factor.solve(slope);
      double size = 0;
      for (int j = 0; j < step.length; j++) {
        size += step[j] * slope[j];
      }
      boolean moved = move(step);
      converged = size <= TOLERANCE || (!moved && size < 1e-10);
      if (!moved) {
        break;
      }
      differentiate(slope);
    }
  }

  private boolean move(double[] step) {
    double share = 1;
    for (int halving = 0; halving < 40; halving++) {
      double[] to = parameters.clone();
      for (int j = 0; j < to.length; j++) {
        to[j] += share * step[j];
      }
      double next = logLikelihood(to);
      if (next >= value - 1e-12 * (1 + Math.abs(value))) {
        parameters = to;
        value = next;
        return true;
      }
      share /= 2;
    }
    return false;
  }

  /** Slopes of the log-likelihood, and the factor of its negative curvature. */
  private void differentiate(double[] slope) {
    int k = parameters.length;
    double[] information = new double[k * k];
    Arrays.fill(slope, 0);
    double[] upper = new double[k];
    double[] lower = new double[k];
    for (int i = 0; i < scores.size(); i++) {
      double weight = scores.frequency(i);
      if (weight > 0) {
        boundRow(upper, i, scores.code(i));
        boundRow(lower, i, scores.code(i) - 1);
        addRow(i, weight, upper, lower, slope, information);
      }
    }
    factor = PositiveDefinite.of(information, k);
  }

  /** Derivatives of a bound less the predictor by the parameters; none for the outer bounds. */
  void boundRow(double[] row, int i, int cut) {
    Arrays.fill(row, 0);
    if (cut < 0 || cut >= cuts) {
      return;
    }
    row[cut] = 1;
    for (int j = 0; j < columns; j++) {
      row[cuts + j] = -x[i * columns + j];
    }
  }

  private void addRow(
      int i, double weight, double[] upper, double[] lower, double[] slope, double[] information) {
    int code = scores.code(i);
    double eta = predictor(parameters, i);
    double a = high(parameters, code) - eta;
    double b = low(parameters, code) - eta;
    double p = between(b, a);
    double fa = slopeAt(a) / p;
    double fb = slopeAt(b) / p;
    double aa = weight * (fa * fa - curvatureAt(a) / p);
    double bb = weight * (fb * fb + curvatureAt(b) / p);
    double ab = -weight * fa * fb;
    int k = slope.length;
    for (int r = 0; r < k; r++) {
      slope[r] += weight * (fa * upper[r] - fb * lower[r]);
      double ofUpper = aa * upper[r] + ab * lower[r];
      double ofLower = ab * upper[r] + bb * lower[r];
      for (int c = 0; c <= r && (ofUpper != 0 || ofLower != 0); c++) {
        information[r * k + c] += ofUpper * upper[c] + ofLower * lower[c];
      }
    }
  }
}
