package agro.trial.bioassay;

import agro.stats.glm.LinkFunction;
import java.util.Arrays;

/**
 * Maximum likelihood of a {@link CurveModel} by Newton's steps, Fisher's where the observed
 * information is not positive definite. Shares stay at 0 where the likelihood would rise below it;
 * such a parameter is then known and has no variance.
 */
final class CurveSearch {

  private static final int MOST_STEPS = 200;
  private static final int MOST_HALVINGS = 40;
  private static final double CLOSE = 1e-13;
  private static final double SLACK = 1e-12;
  private static final int PLACES = 4;

  private final CurveModel model;
  private final double centre;
  private final boolean[] isShare;
  private final int size;
  private final double[] score;
  private final double[][] expected;
  private final double[][] observed;
  private final int[] place = new int[PLACES];
  private final double[] gradient = new double[PLACES];
  private final double[][] second = new double[PLACES][PLACES];

  /** The shares that stay where they are for now. */
  private final boolean[] pinned;

  double[] at;
  double logLikelihood;
  boolean[] held;
  int steps;
  boolean converged;

  private CurveSearch(CurveModel model, double[] start, double centre) {
    this.model = model;
    this.centre = centre;
    this.size = model.parameters;
    this.isShare = model.shares();
    this.at = start.clone();
    this.held = new boolean[size];
    this.pinned = new boolean[size];
    this.score = new double[size];
    this.expected = new double[size][size];
    this.observed = new double[size][size];
  }

  /**
   * Searches from a start that belongs to doses less the centre.
   *
   * @param start a value for each parameter, with a finite likelihood
   */
  static CurveSearch from(CurveModel model, double[] start, double centre) {
    var search = new CurveSearch(model, start, centre);
    search.run();
    return search.converged || !search.hasShares() ? search : search.orFromZero();
  }

  /**
   * Towards a share of 0 steps get shorter and shorter, for the expected information about it grows
   * without bound there. So the best line with all shares at 0 that can be there is found first;
   * where the likelihood does not rise from there into the range of the shares, it is the answer.
   */
  private CurveSearch orFromZero() {
    var again = new CurveSearch(model, at, centre);
    for (int j = 0; j < size; j++) {
      if (isShare[j]) {
        again.at[j] = 0;
        again.evaluate();
        again.pinned[j] = Double.isFinite(again.logLikelihood);
        again.at[j] = again.pinned[j] ? 0 : at[j];
      }
    }
    again.run();
    return again.converged ? again : this;
  }

  private boolean hasShares() {
    for (boolean each : isShare) {
      if (each) {
        return true;
      }
    }
    return false;
  }

  private boolean isAnyPinned() {
    for (boolean each : pinned) {
      if (each) {
        return true;
      }
    }
    return false;
  }

  private void run() {
    evaluate();
    while (steps < MOST_STEPS && !converged && Double.isFinite(logLikelihood)) {
      steps++;
      if (!step()) {
        break;
      }
      if (converged && isAnyPinned()) {
        Arrays.fill(pinned, false);
        converged = false;
      }
    }
  }

  private boolean step() {
    for (int j = 0; j < size; j++) {
      held[j] = isShare[j] && (pinned[j] || (at[j] <= 0 && score[j] <= 0));
    }
    var direction = SmallMatrix.solve(observed, score, held);
    if (direction == null || isUphillNowhere(direction)) {
      direction = SmallMatrix.solve(expected, score, held);
    }
    if (direction == null) {
      return false;
    }
    double decrement = 0;
    for (int j = 0; j < size; j++) {
      decrement += direction[j] * score[j];
    }
    var from = at.clone();
    double before = logLikelihood;
    double share = 1;
    for (int i = 0; i < MOST_HALVINGS; i++) {
      boolean bent = move(from, direction, share);
      evaluate();
      if (logLikelihood >= before - SLACK * Math.abs(before)) {
        converged = decrement < CLOSE && share == 1 && !bent;
        return true;
      }
      share *= 0.5;
    }
    at = from;
    evaluate();
    converged = decrement < 1e-9;
    return false;
  }

  private boolean isUphillNowhere(double[] direction) {
    double slope = 0;
    for (int j = 0; j < size; j++) {
      slope += direction[j] * score[j];
    }
    return !(slope >= 0);
  }

  private boolean move(double[] from, double[] direction, double share) {
    boolean bent = false;
    for (int j = 0; j < size; j++) {
      at[j] = from[j] + share * direction[j];
      if (isShare[j] && at[j] < 0) {
        at[j] = 0;
        bent = true;
      }
    }
    return bent;
  }

  private void evaluate() {
    logLikelihood = 0;
    Arrays.fill(score, 0);
    for (int j = 0; j < size; j++) {
      Arrays.fill(expected[j], 0);
      Arrays.fill(observed[j], 0);
    }
    for (var point : model.points) {
      add(point);
    }
  }

  private void add(CurveModel.Point point) {
    double c = CurveModel.natural(point, at);
    double d = CurveModel.immune(point, at);
    double rest = 1 - c - d;
    if (!(rest > 0)) {
      logLikelihood = Double.NEGATIVE_INFINITY;
      return;
    }
    double eta = model.eta(point, at, centre);
    LinkFunction link = model.link;
    double f = link.mean(eta);
    double g = link.complement(eta);
    double slope = Double.isInfinite(eta) ? 0 : rest * link.slope(eta);
    double curve = Double.isInfinite(eta) ? 0 : rest * link.curvature(eta);
    double bare = slope / rest;
    double z = point.x() - centre;
    int[] places = {point.intercept(), point.slope(), point.natural(), point.immune()};
    System.arraycopy(places, 0, place, 0, PLACES);
    gradient[0] = slope;
    gradient[1] = slope * z;
    gradient[2] = g;
    gradient[3] = -f;
    fillSecond(curve, bare, z);
    accumulate(point, c + rest * f, d + rest * g);
  }

  private void fillSecond(double curve, double bare, double z) {
    second[0][0] = curve;
    second[0][1] = curve * z;
    second[1][1] = curve * z * z;
    second[0][2] = -bare;
    second[0][3] = -bare;
    second[1][2] = -bare * z;
    second[1][3] = -bare * z;
  }

  private void accumulate(CurveModel.Point point, double p, double q) {
    double r = point.responded();
    double alive = point.exposed() - r;
    double slope = 0;
    double squares = 0;
    if (r > 0) {
      logLikelihood += r * Math.log(p);
      slope += r / p;
      squares += r / p / p;
    }
    if (alive > 0) {
      logLikelihood += alive * Math.log(q);
      slope -= alive / q;
      squares += alive / q / q;
    }
    for (int i = 0; i < PLACES; i++) {
      if (place[i] == CurveModel.NONE) {
        continue;
      }
      score[place[i]] += slope * gradient[i];
      for (int k = i; k < PLACES; k++) {
        if (place[k] != CurveModel.NONE) {
          double product = gradient[i] * gradient[k];
          double weight =
              product == 0 ? 0 : point.exposed() * (gradient[i] / p) * (gradient[k] / q);
          put(expected, place[i], place[k], weight);
          put(observed, place[i], place[k], squares * product - slope * second[i][k]);
        }
      }
    }
  }

  private static void put(double[][] matrix, int i, int k, double value) {
    matrix[i][k] += value;
    if (i != k) {
      matrix[k][i] += value;
    }
  }

  /**
   * Covariance of the free parameters, rows of the held ones zero; of the centred line.
   *
   * @return null when the information is singular
   */
  double[][] covariance(FisherInformation information) {
    var matrix = information == FisherInformation.EXPECTED ? expected : observed;
    return SmallMatrix.inverse(matrix, held);
  }

  double centre() {
    return centre;
  }
}
