package agro.generation;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.hipparchus.util.FastMath;

/**
 * Maximum likelihood of the {@link CatchModel} with negative binomial counts: Fisher scoring with a
 * damped step for the means, Newton's method for the size, in turn until neither gains.
 *
 * <p>The size belongs to one open trap-night, so that a visit after n nights has n times the size:
 * merged visits have the variance of their sum. A full trap enters as "this many or more" through
 * the mean of the counts that it could have had, which gives the exact score.
 */
final class CatchFit {

  /** A size per trap-night above which the counts are called Poisson. */
  static final double POISSON_SIZE = 500;

  private static final int ROUNDS = 25;
  private static final int STEPS = 60;
  private static final double ENOUGH = 1e-6;

  private final CatchModel model;
  private final WeakPrior prior;
  private final boolean[] free;
  private final double lowInterval;
  private final double highInterval;

  private final double[][] mean;
  private final double[][][] slopes;
  private final CatchSize sizes;

  double[] parameters;
  double size;
  double logLikelihood;
  double objective;
  boolean converged;

  CatchFit(
      CatchModel model, WeakPrior prior, boolean[] free, double lowInterval, double highInterval) {
    this.model = model;
    this.prior = prior;
    this.free = free.clone();
    this.lowInterval = lowInterval;
    this.highInterval = highInterval;
    mean = new double[model.seasons.size()][];
    slopes = new double[model.seasons.size()][][];
    for (var s = 0; s < mean.length; s++) {
      var visits = model.seasons.get(s).visits();
      mean[s] = new double[visits];
      slopes[s] = new double[visits][model.columns()];
    }
    sizes = new CatchSize(model.seasons);
  }

  /** Evaluates the likelihood at given parameters without any fitting. */
  CatchFit at(double[] given, double givenSize) {
    parameters = given.clone();
    size = givenSize;
    sizes.set(size);
    objective = evaluate(parameters);
    logLikelihood = objective - prior.logDensity(parameters);
    return this;
  }

  /** Derivatives of the penalised log likelihood with respect to all parameters. */
  double[] score() {
    var score = new double[model.parameters()];
    scoreAndInformation(score, new double[score.length][score.length]);
    return score;
  }

  /** Derivative of the log likelihood with respect to the logarithm of the size. */
  double sizeScore() {
    fillMeans(parameters);
    return sizes.slopes(mean, FastMath.log(size))[0];
  }

  /** Expected information about all parameters, the weak priors included. */
  double[][] information() {
    var information = new double[model.parameters()][model.parameters()];
    scoreAndInformation(new double[model.parameters()], information);
    return information;
  }

  /** Standard error of the interval from the expected information, other parameters free. */
  double intervalStandardError() {
    var k = model.intervalIndex();
    return free[k] ? Math.sqrt(covariance()[k][k]) : Double.NaN;
  }

  /** Inverse of the expected information, zero for parameters that are held; NaN without one. */
  double[][] covariance() {
    var information = information();
    var places = IntStream.range(0, free.length).filter(i -> free[i]).toArray();
    var covariance = new double[free.length][free.length];
    for (var column = 0; column < places.length; column++) {
      var matrix = new double[places.length][places.length];
      for (var i = 0; i < places.length; i++) {
        for (var j = 0; j <= i; j++) {
          matrix[i][j] = information[places[i]][places[j]];
        }
      }
      var unit = new double[places.length];
      unit[column] = 1;
      var solved = Cholesky.solve(matrix, unit);
      for (var i = 0; i < places.length; i++) {
        covariance[places[i]][places[column]] = solved ? unit[i] : Double.NaN;
      }
    }
    return covariance;
  }

  /**
   * Derivatives of one season's means by its own parameters, each over the standard deviation of
   * the count: rows of visits, columns as in {@link CatchModel#columnsOf}.
   */
  double[][] standardSlopes(int season) {
    model.means(season, parameters, mean[season], slopes[season]);
    var data = model.seasons.get(season);
    var standard = new double[data.visits()][];
    for (var v = 0; v < standard.length; v++) {
      var m = mean[season][v];
      var sd = FastMath.sqrt(NegativeBinomial.variance(m, size * data.nightsOpen[v]));
      standard[v] = Arrays.stream(slopes[season][v]).map(slope -> slope / sd).toArray();
    }
    return standard;
  }

  /** Runs the fit from a start; the size stays fixed unless {@code fitSize}. */
  CatchFit maximise(double[] start, double startSize, boolean fitSize) {
    at(start, startSize);
    for (var round = 0; round < ROUNDS; round++) {
      var before = objective;
      scoringSteps();
      if (fitSize) {
        fitSize();
      }
      if (objective - before < ENOUGH) {
        converged = true;
        break;
      }
    }
    logLikelihood = objective - prior.logDensity(parameters);
    return this;
  }

  boolean atBoundary() {
    var interval = parameters[model.intervalIndex()];
    var margin = 1e-6 * (highInterval - lowInterval);
    return free[model.intervalIndex()]
        && (interval <= lowInterval + margin || interval >= highInterval - margin);
  }

  boolean isFree(int parameter) {
    return free[parameter];
  }

  CatchModel model() {
    return model;
  }

  /** Pearson residuals of one season's visits. */
  double[] residuals(int season) {
    model.means(season, parameters, mean[season], null);
    var data = model.seasons.get(season);
    var residual = new double[data.visits()];
    for (var v = 0; v < residual.length; v++) {
      var visitSize = size * data.nightsOpen[v];
      residual[v] =
          (data.count[v] - mean[season][v])
              / FastMath.sqrt(NegativeBinomial.variance(mean[season][v], visitSize));
    }
    return residual;
  }

  /** Mean catches of one season's visits. */
  double[] means(int season) {
    model.means(season, parameters, mean[season], null);
    return mean[season].clone();
  }

  private void fillMeans(double[] at) {
    for (var s = 0; s < mean.length; s++) {
      model.means(s, at, mean[s], null);
    }
  }

  private double evaluate(double[] at) {
    fillMeans(at);
    return prior.logDensity(at) + sizes.logLikelihood(mean);
  }

  private void scoringSteps() {
    var damping = 1e-3;
    for (var step = 0; step < STEPS && damping < 1e8; step++) {
      var score = new double[model.parameters()];
      var information = new double[model.parameters()][model.parameters()];
      scoreAndInformation(score, information);
      var gain = 0.0;
      while (damping < 1e8) {
        var candidate = step(score, information, damping);
        var value = candidate == null ? Double.NEGATIVE_INFINITY : evaluate(candidate);
        if (value >= objective) {
          gain = value - objective;
          parameters = candidate;
          objective = value;
          damping = Math.max(1e-9, damping / 10);
          break;
        }
        damping *= 10;
      }
      if (gain < ENOUGH) {
        return;
      }
    }
  }

  private void scoreAndInformation(double[] score, double[][] information) {
    var local = new double[model.columns()][model.columns()];
    for (var s = 0; s < mean.length; s++) {
      model.means(s, parameters, mean[s], slopes[s]);
      var data = model.seasons.get(s);
      var columns = model.columnsOf(s);
      for (var row : local) {
        Arrays.fill(row, 0);
      }
      for (var v = 0; v < data.visits(); v++) {
        var m = mean[s][v];
        var visitSize = size * data.nightsOpen[v];
        var weight = 1 / NegativeBinomial.variance(m, visitSize);
        var count =
            data.full[v]
                ? NegativeBinomial.meanOfAtLeast(data.count[v], m, visitSize)
                : data.count[v];
        var slope = slopes[s][v];
        for (var i = 0; i < columns.length; i++) {
          var weighted = weight * slope[i];
          score[columns[i]] += weighted * (count - m);
          for (var j = 0; j <= i; j++) {
            local[i][j] += weighted * slope[j];
          }
        }
      }
      for (var i = 0; i < columns.length; i++) {
        for (var j = 0; j < columns.length; j++) {
          information[columns[i]][columns[j]] += local[Math.max(i, j)][Math.min(i, j)];
        }
      }
    }
    prior.addTo(parameters, score, information);
  }

  /** The free parameters, without an interval that is held at the edge of its range. */
  private boolean[] moving(double[] score) {
    var k = model.intervalIndex();
    var moving = free.clone();
    moving[k] &=
        !(parameters[k] <= lowInterval && score[k] < 0)
            && !(parameters[k] >= highInterval && score[k] > 0);
    return moving;
  }

  /** A damped step, or null when the damped information is not positive definite. */
  private double[] step(double[] score, double[][] information, double damping) {
    var moving = moving(score);
    var places = new int[moving.length];
    var count = 0;
    for (var i = 0; i < moving.length; i++) {
      if (moving[i]) {
        places[count++] = i;
      }
    }
    var matrix = new double[count][count];
    var move = new double[count];
    for (var i = 0; i < count; i++) {
      for (var j = 0; j <= i; j++) {
        matrix[i][j] = information[places[i]][places[j]];
      }
      matrix[i][i] = matrix[i][i] * (1 + damping) + 1e-12;
      move[i] = score[places[i]];
    }
    if (!Cholesky.solve(matrix, move)) {
      return null; // more damping makes it so
    }
    var next = parameters.clone();
    for (var i = 0; i < count; i++) {
      next[places[i]] += move[i];
    }
    var k = model.intervalIndex();
    next[k] = free[k] ? Math.min(highInterval, Math.max(lowInterval, next[k])) : next[k];
    return next;
  }

  private void fitSize() {
    fillMeans(parameters);
    var before = size;
    var best = sizes.best(mean, size);
    var value = sizes.logLikelihood(mean) + prior.logDensity(parameters);
    if (value > objective) {
      size = best;
      objective = value;
    } else {
      sizes.set(before);
    }
  }
}
