package agro.stats.glm;

/** Numbers of one fit: full column rank is the caller's business. Arrays are shared, not copied. */
final class ScoringProblem {

  final int rows;
  final int columns;

  /** Element of row i and column j at i * columns + j. */
  final double[] x;

  final double[] y;
  final double[] total;
  final double[] weight;
  final double[] offset;
  final Scatter scatter;
  final LinkFunction link;
  final double shape;
  final boolean penalised;

  private ScoringProblem(
      double[] x, int columns, ResponseNumbers response, ScoringKind kind, double shape) {
    this.x = x;
    this.columns = columns;
    this.rows = response.y().length;
    this.y = response.y();
    this.total = response.total();
    this.weight = response.weight();
    this.offset = response.offset();
    this.scatter = kind.scatter();
    this.link = kind.link();
    this.penalised = kind.penalised();
    this.shape = shape;
  }

  static ScoringProblem of(
      double[] x, int columns, ResponseNumbers response, ScoringKind kind, double shape) {
    return new ScoringProblem(x, columns, response, kind, shape);
  }

  ScoringKind kind() {
    return new ScoringKind(scatter, link, penalised);
  }

  ResponseNumbers response() {
    return new ResponseNumbers(y, total, weight, offset);
  }

  ScoringProblem withShape(double other) {
    return new ScoringProblem(x, columns, response(), kind(), other);
  }

  /** The response of some of the rows. */
  ScoringProblem withRows(int[] kept, int[] keptColumns) {
    double[] part = new double[kept.length * keptColumns.length];
    for (int i = 0; i < kept.length; i++) {
      for (int j = 0; j < keptColumns.length; j++) {
        part[i * keptColumns.length + j] = x[kept[i] * columns + keptColumns[j]];
      }
    }
    return new ScoringProblem(part, keptColumns.length, response().rows(kept), kind(), shape);
  }

  /** Linear predictor of each row. */
  double[] predictor(double[] beta) {
    double[] eta = new double[rows];
    for (int i = 0; i < rows; i++) {
      double sum = offset[i];
      for (int j = 0, at = i * columns; j < columns; j++, at++) {
        sum += x[at] * beta[j];
      }
      eta[i] = sum;
    }
    return eta;
  }

  /** Kernel of the log-likelihood; minus infinity where a mean is not allowed. */
  double kernel(double[] eta) {
    double sum = 0;
    for (int i = 0; i < rows; i++) {
      double mean = link.mean(eta[i]);
      double complement = link.complement(eta[i]);
      if (!scatter.allows(mean, complement)) {
        return Double.NEGATIVE_INFINITY;
      }
      sum += weight[i] * scatter.kernel(y[i], total[i], mean, complement, shape);
    }
    return Double.isNaN(sum) ? Double.NEGATIVE_INFINITY : sum;
  }

  /** Kernel of the log-likelihood of means that were computed before. */
  double kernel(RowMeans at) {
    double sum = 0;
    for (int i = 0; i < rows; i++) {
      double mean = at.mean[i];
      double complement = at.complement[i];
      if (!scatter.allows(mean, complement)) {
        return Double.NEGATIVE_INFINITY;
      }
      sum += weight[i] * scatter.kernel(y[i], total[i], mean, complement, shape);
    }
    return Double.isNaN(sum) ? Double.NEGATIVE_INFINITY : sum;
  }

  /** Expected information and score of each row; either is 0 where the mean is at its limit. */
  void differentiate(RowMeans at, double[] weights, double[] scores) {
    for (int i = 0; i < rows; i++) {
      double slope = at.slope[i];
      double rate = slope / scatter.variance(at.mean[i], at.complement[i], shape);
      double w = weight[i] * total[i] * slope * rate;
      weights[i] = w > 0 && w < Double.POSITIVE_INFINITY ? w : 0;
      boolean top = y[i] == total[i] && link.isForProportions();
      double rest = top ? total[i] * at.complement[i] : y[i] - total[i] * at.mean[i];
      double u = weight[i] * rest * rate;
      scores[i] = Double.isFinite(u) ? u : 0;
    }
  }

  /** The part of the log-likelihood that does not depend on the means. */
  double constantSum() {
    double sum = 0;
    for (int i = 0; i < rows; i++) {
      sum += weight[i] * scatter.constant(y[i], total[i], shape);
    }
    return sum;
  }

  /** The information about the linear predictor of a row that is expected of it. */
  double expectedWeight(int i, double eta) {
    double slope = link.slope(eta);
    double variance = scatter.variance(link.mean(eta), link.complement(eta), shape);
    double w = weight[i] * total[i] * slope * slope / variance;
    return w > 0 && w < Double.POSITIVE_INFINITY ? w : 0;
  }

  private double residual(int i, double eta, double mean) {
    return y[i] == total[i] && total[i] > 0 && link.isForProportions()
        ? total[i] * link.complement(eta)
        : y[i] - total[i] * mean;
  }

  /** The information about the linear predictor of a row in what was observed. */
  double observedWeight(int i, double eta) {
    double mean = link.mean(eta);
    double complement = link.complement(eta);
    double slope = link.slope(eta);
    double variance = scatter.variance(mean, complement, shape);
    double bend =
        link.curvature(eta) / variance
            - slope
                * slope
                * scatter.varianceSlope(mean, complement, shape)
                / (variance * variance);
    double w = expectedWeight(i, eta) - weight[i] * residual(i, eta, mean) * bend;
    return Double.isFinite(w) ? w : 0;
  }

  /** Relative change of the expected weight with the linear predictor. */
  double weightSlope(double eta) {
    double mean = link.mean(eta);
    double complement = link.complement(eta);
    double slope = link.slope(eta);
    double rate =
        2 * link.curvature(eta) / slope
            - scatter.varianceSlope(mean, complement, shape)
                * slope
                / scatter.variance(mean, complement, shape);
    return Double.isFinite(rate) ? rate : 0;
  }

  /** Information of the coefficients from the weights of the rows; the lower triangle is filled. */
  double[] information(double[] weights) {
    double[] information = new double[columns * columns];
    for (int i = 0; i < rows; i++) {
      addRow(information, i, weights[i]);
    }
    return information;
  }

  private void addRow(double[] information, int i, double w) {
    int from = i * columns;
    for (int a = 0; a < columns; a++) {
      double wa = w * x[from + a];
      if (wa == 0) {
        continue;
      }
      for (int b = 0, at = a * columns; b <= a; b++, at++) {
        information[at] += wa * x[from + b];
      }
    }
  }
}
