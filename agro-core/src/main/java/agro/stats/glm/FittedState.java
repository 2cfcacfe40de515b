package agro.stats.glm;

import java.util.Arrays;

/**
 * Where a fit ended: coefficients of the columns that the rows determine, rows that run to their
 * limit, and the factor of the information.
 */
final class FittedState {

  final PredictorDesign design;

  /** All rows, columns of full rank. */
  final ScoringProblem problem;

  /** The rows that stay and the columns that they determine; equal to the problem as a rule. */
  final ScoringProblem reduced;

  final SeparationCone cone;
  final int[] keptRows;

  /** Places of the reduced columns among those of the problem. */
  final int[] keptColumns;

  final RowSpace keptSpace;
  final Scoring search;

  private FittedState(
      PredictorDesign design,
      ScoringProblem problem,
      ScoringProblem reduced,
      SeparationCone cone,
      int[] keptRows,
      RowSpace keptSpace,
      Scoring search) {
    this.design = design;
    this.problem = problem;
    this.reduced = reduced;
    this.cone = cone;
    this.keptRows = keptRows;
    this.keptColumns = keptSpace == null ? range(problem.columns) : keptSpace.pivots();
    this.keptSpace = keptSpace;
    this.search = search;
  }

  static int[] range(int size) {
    int[] range = new int[size];
    Arrays.setAll(range, i -> i);
    return range;
  }

  /** Fits, and looks for separation where the search or its end gives reason to. */
  static FittedState fit(PredictorDesign design, ScoringProblem problem, double[] start) {
    var search = Scoring.run(problem, start, problem.penalised ? Scoring.MOST_ITERATIONS : 15);
    if (!problem.penalised && (!search.converged() || nearLimit(problem, search))) {
      var cone = SeparationCone.of(problem);
      if (cone.isSeparated()) {
        return separated(design, problem, cone);
      }
      if (!search.converged()) {
        search = Scoring.run(problem, search.beta(), Scoring.MOST_ITERATIONS);
      }
    }
    return new FittedState(design, problem, problem, null, range(problem.rows), null, search);
  }

  private static FittedState separated(
      PredictorDesign design, ScoringProblem problem, SeparationCone cone) {
    int[] kept = cone.kept();
    var rows = problem.withRows(kept, range(problem.columns));
    var space = RowSpace.of(rows.x, kept.length, problem.columns);
    var reduced = problem.withRows(kept, space.pivots());
    var search = Scoring.run(reduced, new double[0], Scoring.MOST_ITERATIONS);
    return new FittedState(design, problem, reduced, cone, kept, space, search);
  }

  private static boolean nearLimit(ScoringProblem problem, Scoring search) {
    for (int i = 0; i < problem.rows; i++) {
      int limit = SeparationCone.limitOf(problem, i);
      double eta = search.eta()[i];
      boolean low = limit < 0 && problem.link.mean(eta) < 1e-5;
      boolean high = limit > 0 && problem.link.complement(eta) < 1e-5;
      if (low || high) {
        return true;
      }
    }
    return false;
  }

  boolean isSeparated() {
    return cone != null;
  }

  /** The same fit with another search of the same problem. */
  FittedState with(ScoringProblem other, Scoring otherSearch) {
    return new FittedState(design, other, other, null, keptRows, null, otherSearch);
  }

  /** Picks those entries of a function of all coefficients that the problem has. */
  double[] ofProblem(double[] function) {
    int[] pivots = design.space().pivots();
    double[] part = new double[pivots.length];
    for (int j = 0; j < part.length; j++) {
      part[j] = function[pivots[j]];
    }
    return part;
  }

  /** Picks those entries of a function of the problem's coefficients that the reduced one has. */
  double[] ofReduced(double[] function) {
    double[] part = new double[keptColumns.length];
    for (int j = 0; j < part.length; j++) {
      part[j] = function[keptColumns[j]];
    }
    return part;
  }

  /** State of a function of the problem's coefficients. */
  EstimateState stateOf(double[] function) {
    if (cone == null || keptSpace.determines(function)) {
      return EstimateState.FINITE;
    }
    return cone.direction(function);
  }

  /** Linear predictors of all rows, infinite where a row runs to its limit. */
  double[] eta() {
    double[] eta = new double[problem.rows];
    for (int i = 0; i < eta.length; i++) {
      eta[i] = SeparationCone.limitOf(problem, i) * Double.POSITIVE_INFINITY;
    }
    for (int i = 0; i < keptRows.length; i++) {
      eta[keptRows[i]] = search.eta()[i];
    }
    return eta;
  }

  /** Coefficients of the problem, with NaN where the rows that stay determine none. */
  double[] problemBeta() {
    double[] beta = new double[problem.columns];
    Arrays.fill(beta, Double.NaN);
    for (int j = 0; j < keptColumns.length; j++) {
      beta[keptColumns[j]] = search.beta()[j];
    }
    return beta;
  }

  /** Constant part of the log-likelihood. */
  double constant() {
    return problem.constantSum();
  }
}
