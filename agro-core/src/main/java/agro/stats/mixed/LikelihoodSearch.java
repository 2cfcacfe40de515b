package agro.stats.mixed;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Climbs to the largest likelihood by Newton steps, with the observed information where it is
 * positive definite and the expected one elsewhere. Variances stay at or above zero: one that a
 * step would make negative stops at zero and is let go when the likelihood rises from there.
 */
final class LikelihoodSearch {

  private static final int STEPS = 200;
  private static final int HALVINGS = 40;
  private static final double DONE = 1e-20;
  private static final double CLOSE = 1e-7;
  private static final double SMALLEST_RESIDUAL = 1e-9;

  private final CovarianceModel covariance;
  private final double[][] columns;
  private final double[] response;
  private final LikelihoodKind kind;
  private final double scale;

  LikelihoodSearch(
      CovarianceModel covariance,
      double[][] columns,
      double[] response,
      LikelihoodKind kind,
      double scale) {
    this.covariance = covariance;
    this.columns = columns;
    this.response = response;
    this.kind = kind;
    this.scale = scale;
  }

  LikelihoodPoint climb() {
    boolean correlated = covariance.parameters() > covariance.residualAt() + 1;
    double[] correlations = correlated ? new double[] {0.2, 0.7} : new double[] {0};
    LikelihoodPoint best = null;
    for (double correlation : correlations) {
      double[] start = new double[covariance.parameters()];
      Arrays.fill(start, scale / (covariance.residualAt() + 1));
      if (correlated) {
        start[start.length - 1] = correlation;
      }
      var found = climbFrom(start);
      if (best == null || found.logLikelihood() > best.logLikelihood()) {
        best = found;
      }
    }
    return best;
  }

  private LikelihoodPoint climbFrom(double[] start) {
    var here = at(start).orElseThrow(() -> inseparable(List.of()));
    requireSeparable(here);
    for (int i = 0; i < STEPS; i++) {
      var slope = here.slope();
      int[] free = free(here.parameters(), slope.score);
      double[] step = step(slope, free);
      double rise = 0;
      for (int j = 0; j < free.length; j++) {
        rise += step[j] * slope.score[free[j]];
      }
      if (rise < DONE) {
        return finished(here);
      }
      var next = walk(here, free, step, rise);
      if (next.isEmpty()) {
        if (rise < CLOSE) {
          return finished(here);
        }
        throw notFound();
      }
      here = next.get();
    }
    throw notFound();
  }

  private LikelihoodPoint finished(LikelihoodPoint point) {
    if (point.parameters()[covariance.residualAt()] <= 2 * SMALLEST_RESIDUAL * scale) {
      throw InputProblem.of("The residual variance is estimated as zero")
          .expected("observations that scatter about the fixed and random effects")
          .because("standard errors and tests rest on the residual variance")
          .mend("leave out the random term with as many levels as there are distinct rows");
    }
    return point;
  }

  private static InputProblem notFound() {
    return InputProblem.of("The search for the largest likelihood did not settle")
        .expected("a largest value within 200 steps")
        .because("estimates from somewhere on the way would be wrong")
        .mend("leave out the random term with the fewest levels, or the correlation in time");
  }

  private Optional<LikelihoodPoint> at(double[] parameters) {
    return LikelihoodPoint.at(covariance, columns, response, kind, parameters);
  }

  private Optional<LikelihoodPoint> walk(
      LikelihoodPoint here, int[] free, double[] step, double rise) {
    double share = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double[] candidate = here.parameters();
      for (int j = 0; j < free.length; j++) {
        candidate[free[j]] = limited(free[j], candidate[free[j]] + share * step[j]);
      }
      var there = at(candidate);
      // Close to the top the likelihood is flat to its last digits: the step itself is better
      // known.
      double allowance = rise < CLOSE ? 1e-11 * (1 + Math.abs(here.logLikelihood())) : 0;
      if (there.isPresent() && there.get().logLikelihood() > here.logLikelihood() - allowance) {
        return Arrays.equals(candidate, here.parameters()) ? Optional.empty() : there;
      }
      share /= 2;
    }
    return Optional.empty();
  }

  private double limited(int parameter, double value) {
    if (covariance.isCorrelation(parameter)) {
      return Math.max(0, Math.min(CovarianceModel.LARGEST_CORRELATION, value));
    }
    return Math.max(parameter == covariance.residualAt() ? SMALLEST_RESIDUAL * scale : 0, value);
  }

  /** Parameters that are not held at a bound. */
  private int[] free(double[] parameters, double[] score) {
    var free = new ArrayList<Integer>();
    for (int k = 0; k < parameters.length; k++) {
      boolean atLower = parameters[k] == limited(k, Double.NEGATIVE_INFINITY) && score[k] <= 0;
      boolean atUpper = parameters[k] == limited(k, Double.MAX_VALUE) && score[k] >= 0;
      if (!(atLower || atUpper)) {
        free.add(k);
      }
    }
    return free.stream().mapToInt(Integer::intValue).toArray();
  }

  private double[] step(LikelihoodPoint.Slope slope, int[] free) {
    double[] score = new double[free.length];
    for (int j = 0; j < free.length; j++) {
      score[j] = slope.score[free[j]];
    }
    var inverse =
        DenseMatrix.invert(part(slope.observed, free))
            .or(() -> DenseMatrix.invert(part(slope.expected, free)))
            .orElseThrow(() -> inseparable(List.of()));
    return DenseMatrix.times(inverse.inverse(), score);
  }

  static double[][] part(double[][] matrix, int[] chosen) {
    double[][] part = new double[chosen.length][chosen.length];
    for (int i = 0; i < chosen.length; i++) {
      for (int j = 0; j < chosen.length; j++) {
        part[i][j] = matrix[chosen[i]][chosen[j]];
      }
    }
    return part;
  }

  private void requireSeparable(LikelihoodPoint point) {
    double[][] information = point.slope().expected;
    double largest = 0;
    for (int k = 0; k < information.length; k++) {
      largest = Math.max(largest, information[k][k]);
    }
    var lost = new ArrayList<Integer>();
    for (int k = 0; k < covariance.residualAt(); k++) {
      if (information[k][k] <= 1e-12 * largest) {
        lost.add(k + 1);
      }
    }
    if (!lost.isEmpty() || DenseMatrix.invert(information).isEmpty()) {
      throw inseparable(lost);
    }
  }

  private static InputProblem inseparable(List<Integer> lost) {
    return InputProblem.of(
            lost.isEmpty()
                ? "The data cannot tell the random terms from each other or from the residuals"
                : "Nothing is left of random term number "
                    + lost.get(0)
                    + " beside the fixed terms")
        .expected("random terms that group the observations in different ways")
        .because("a variance is estimated from differences that belong to it alone")
        .mend("leave out a random term that repeats a fixed one, another one, or the single rows");
  }
}
