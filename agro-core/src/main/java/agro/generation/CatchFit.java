package agro.generation;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.util.FastMath;

/**
 * Maximum likelihood of the {@link CatchModel} with negative binomial counts: Fisher scoring with a
 * damped step for the means, Brent's method for the size, in turn until neither gains.
 *
 * <p>The size belongs to one open trap-night, so that a visit after n nights has n times the size:
 * merged visits have the variance of their sum. A full trap enters as "this many or more" through
 * the mean of the counts that it could have had, which gives the exact score.
 */
final class CatchFit {

  /** A size per trap-night above which the counts are called Poisson. */
  static final double POISSON_SIZE = 500;

  private static final double SMALLEST_SIZE = 0.01;
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
  private final double[][] logWays;

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
    logWays = new double[model.seasons.size()][];
    for (var s = 0; s < mean.length; s++) {
      var visits = model.seasons.get(s).visits();
      mean[s] = new double[visits];
      slopes[s] = new double[visits][model.parameters()];
      logWays[s] = new double[visits];
    }
  }

  /** Evaluates the likelihood at given parameters without any fitting. */
  CatchFit at(double[] given, double givenSize) {
    parameters = given.clone();
    setSize(givenSize);
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

  /**
   * The part of the likelihood that depends on the size alone is kept, for the means change often.
   */
  private void setSize(double sizePerNight) {
    size = sizePerNight;
    for (var s = 0; s < logWays.length; s++) {
      var data = model.seasons.get(s);
      for (var v = 0; v < data.visits(); v++) {
        logWays[s][v] = NegativeBinomial.logWays(data.count[v], sizePerNight * data.nightsOpen[v]);
      }
    }
  }

  private double evaluate(double[] at) {
    var sum = prior.logDensity(at);
    for (var s = 0; s < mean.length; s++) {
      model.means(s, at, mean[s], null);
      sum += logLikelihood(s);
    }
    return sum;
  }

  private double logLikelihood(int season) {
    var data = model.seasons.get(season);
    var sum = 0.0;
    for (var v = 0; v < data.visits(); v++) {
      var visitSize = size * data.nightsOpen[v];
      var m = mean[season][v];
      sum +=
          data.full[v]
              ? FastMath.log(
                  FastMath.max(
                      1e-300, NegativeBinomial.chanceOfAtLeast(data.count[v], m, visitSize)))
              : logWays[season][v] + NegativeBinomial.logOdds(data.count[v], m, visitSize);
    }
    return sum;
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
    for (var s = 0; s < mean.length; s++) {
      model.means(s, parameters, mean[s], slopes[s]);
      var data = model.seasons.get(s);
      var columns = columnsOf(s);
      for (var v = 0; v < data.visits(); v++) {
        var m = mean[s][v];
        var visitSize = size * data.nightsOpen[v];
        var weight = 1 / NegativeBinomial.variance(m, visitSize);
        var count =
            data.full[v]
                ? NegativeBinomial.meanOfAtLeast(data.count[v], m, visitSize)
                : data.count[v];
        for (var i : columns) {
          var weighted = weight * slopes[s][v][i];
          score[i] += weighted * (count - m);
          for (var j : columns) {
            information[i][j] += weighted * slopes[s][v][j];
          }
        }
      }
    }
    prior.addTo(parameters, score, information);
  }

  private int[] columnsOf(int season) {
    var columns = new int[4 + model.generations];
    columns[0] = season;
    columns[1] = model.intervalIndex();
    columns[2] = model.firstScaleIndex();
    columns[3] = model.addedScaleIndex();
    for (var g = 0; g < model.generations; g++) {
      columns[4 + g] = model.catchIndex(season, g);
    }
    return columns;
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

  private static int count(boolean[] moving) {
    var count = 0;
    for (var each : moving) {
      count += each ? 1 : 0;
    }
    return count;
  }

  private double[] step(double[] score, double[][] information, double damping) {
    var moving = moving(score);
    var count = count(moving);
    var matrix = new Array2DRowRealMatrix(count, count);
    var right = new ArrayRealVector(count);
    for (int i = 0, row = 0; i < moving.length; i++) {
      if (moving[i]) {
        for (int j = 0, column = 0; j < moving.length; j++) {
          if (moving[j]) {
            matrix.setEntry(
                row,
                column++,
                information[i][j] * (i == j ? 1 + damping : 1) + (i == j ? 1e-12 : 0));
          }
        }
        right.setEntry(row++, score[i]);
      }
    }
    try {
      var move = new CholeskyDecomposition(matrix, 1e-8, 1e-300).getSolver().solve(right);
      var next = parameters.clone();
      for (int i = 0, row = 0; i < moving.length; i++) {
        if (moving[i]) {
          next[i] += move.getEntry(row++);
        }
      }
      var k = model.intervalIndex();
      next[k] = free[k] ? Math.min(highInterval, Math.max(lowInterval, next[k])) : next[k];
      return next;
    } catch (MathIllegalArgumentException notPositiveDefinite) {
      return null; // more damping makes it so
    }
  }

  private void fitSize() {
    for (var s = 0; s < mean.length; s++) {
      model.means(s, parameters, mean[s], null);
    }
    var before = size;
    UnivariateFunction profile =
        logSize -> {
          setSize(FastMath.exp(logSize));
          var sum = 0.0;
          for (var s = 0; s < mean.length; s++) {
            sum += logLikelihood(s);
          }
          return sum;
        };
    var best =
        new BrentOptimizer(1e-4, 1e-4)
            .optimize(
                new MaxEval(200),
                new UnivariateObjectiveFunction(profile),
                GoalType.MAXIMIZE,
                new SearchInterval(
                    FastMath.log(SMALLEST_SIZE),
                    FastMath.log(2 * POISSON_SIZE),
                    FastMath.log(Math.min(POISSON_SIZE, Math.max(2 * SMALLEST_SIZE, before)))));
    var value = best.getValue() + prior.logDensity(parameters);
    setSize(value > objective ? FastMath.exp(best.getPoint()) : before);
    objective = Math.max(value, objective);
  }
}
