package agro.stats.glm;

/**
 * Fisher's scoring with halved steps. Optionally the log-likelihood is raised by half the log
 * determinant of the expected information (Jeffreys' prior), which for canonical links is the
 * correction of Firth 1993, Biometrika 80:27-38 (from memory).
 */
final class Scoring {

  /** Square of the last step in units of its standard error below which the search ends. */
  static final double TOLERANCE = 1e-20;

  static final int MOST_ITERATIONS = 200;
  private static final int MOST_HALVINGS = 40;

  private final ScoringProblem problem;

  /** A linear function of the coefficients that is held where it is; empty for none. */
  private final double[] held;

  private double[] beta;
  private double[] eta;
  private double value;
  private RowMeans means;
  private RowMeans spare;
  private final double[] weights;
  private final double[] scores;
  private PositiveDefinite factor;
  private int iterations;
  private boolean converged;

  private Scoring(ScoringProblem problem, double[] held) {
    this.problem = problem;
    this.held = held;
    this.means = new RowMeans(problem.rows);
    this.spare = new RowMeans(problem.rows);
    this.weights = new double[problem.rows];
    this.scores = new double[problem.rows];
  }

  /**
   * Fits.
   *
   * @param problem the numbers
   * @param start coefficients to begin with; empty for a start from the observations
   * @param mostIterations when to give up
   * @return the state in which the search ended
   */
  static Scoring run(ScoringProblem problem, double[] start, int mostIterations) {
    var search = new Scoring(problem, new double[0]);
    search.begin(start);
    search.climb(mostIterations);
    return search;
  }

  /** Fits with a linear function of the coefficients held at its value at the start. */
  static Scoring holding(double[] held, ScoringProblem problem, double[] start) {
    var search = new Scoring(problem, held);
    search.moveTo(start.clone());
    search.climb(MOST_ITERATIONS);
    return search;
  }

  double[] beta() {
    return beta;
  }

  double[] eta() {
    return eta;
  }

  int iterations() {
    return iterations;
  }

  boolean converged() {
    return converged;
  }

  /** Factor of the expected information at the end. */
  PositiveDefinite factor() {
    return factor;
  }

  /** The function that was made greatest: kernel of the log-likelihood, with the penalty if any. */
  double value() {
    return value;
  }

  private void begin(double[] start) {
    if (start.length == problem.columns && start.length > 0) {
      moveTo(start.clone());
      if (value > Double.NEGATIVE_INFINITY) {
        return;
      }
    }
    moveTo(fromObservations(false));
    if (value == Double.NEGATIVE_INFINITY) {
      moveTo(fromObservations(true));
    }
  }

  /** Weighted least squares on the link scale, to means near the data or to one common mean. */
  private double[] fromObservations(boolean common) {
    int n = problem.rows;
    double[] w = new double[n];
    double[] z = new double[n];
    double all = 0;
    double units = 0;
    for (int i = 0; i < n; i++) {
      all += problem.weight[i] * problem.scatter.startingMean(problem.y[i], problem.total[i]);
      units += problem.weight[i];
    }
    for (int i = 0; i < n; i++) {
      double mean =
          common ? all / units : problem.scatter.startingMean(problem.y[i], problem.total[i]);
      double start = problem.link.eta(mean);
      w[i] = common ? problem.weight[i] : problem.expectedWeight(i, start);
      z[i] = start - problem.offset[i];
    }
    var normal = PositiveDefinite.of(problem.information(w), problem.columns);
    for (int i = 0; i < n; i++) {
      z[i] *= w[i];
    }
    return normal.isRegular() ? normal.solve(sums(z)) : new double[problem.columns];
  }

  private double[] sums(double[] perRow) {
    int k = problem.columns;
    double[] sums = new double[k];
    for (int i = 0; i < problem.rows; i++) {
      for (int j = 0; j < k; j++) {
        sums[j] += problem.x[i * k + j] * perRow[i];
      }
    }
    return sums;
  }

  private void moveTo(double[] to) {
    beta = to;
    eta = problem.predictor(to);
    means.fill(problem.link, eta);
    value = problem.kernel(means);
    if (value > Double.NEGATIVE_INFINITY && problem.penalised) {
      factorInformation();
      value = factor.isRegular() ? value + 0.5 * factor.logDeterminant() : Double.NEGATIVE_INFINITY;
    }
  }

  private void factorInformation() {
    problem.differentiate(means, weights, scores);
    factor = PositiveDefinite.of(problem.information(weights), problem.columns);
  }

  private double[] score() {
    double[] perRow = scores.clone();
    if (problem.penalised) {
      for (int i = 0; i < problem.rows; i++) {
        double leverage = weights[i] * factor.quadratic(problem.x, i * problem.columns);
        perRow[i] += 0.5 * leverage * problem.weightSlope(eta[i]);
      }
    }
    return sums(perRow);
  }

  private void climb(int mostIterations) {
    factorInformation();
    while (!converged && iterations < mostIterations && factor.isRegular() && finite()) {
      iterations++;
      double[] slope = score();
      double[] step = factor.solve(slope);
      hold(step);
      double size = 0;
      for (int j = 0; j < step.length; j++) {
        size += step[j] * slope[j];
      }
      boolean moved = tryStep(step, size);
      converged = !(size > TOLERANCE) || (!moved && size < 1e-12);
      factorInformation();
      if (!moved) {
        break;
      }
    }
  }

  private void hold(double[] step) {
    if (held.length == 0) {
      return;
    }
    double[] along = factor.solve(held);
    double change = 0;
    double length = 0;
    for (int j = 0; j < held.length; j++) {
      change += held[j] * step[j];
      length += held[j] * along[j];
    }
    for (int j = 0; j < held.length; j++) {
      step[j] -= along[j] * change / length;
    }
  }

  private boolean finite() {
    return value > Double.NEGATIVE_INFINITY;
  }

  /** Halves the step until the value does not fall by more than rounding. */
  private boolean tryStep(double[] step, double size) {
    double[] from = beta;
    double[] oldEta = eta;
    RowMeans oldMeans = means;
    means = spare;
    spare = oldMeans;
    double old = value;
    double slack = 1e-13 * (1 + Math.abs(old));
    double share = 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      double[] to = from.clone();
      for (int j = 0; j < to.length; j++) {
        to[j] += share * step[j];
      }
      moveTo(to);
      if (value >= old - slack && (size < 1e-6 || value >= old + 1e-4 * share * size - slack)) {
        return true;
      }
      share /= 2;
    }
    beta = from;
    eta = oldEta;
    spare = means;
    means = oldMeans;
    value = old;
    return false;
  }
}
