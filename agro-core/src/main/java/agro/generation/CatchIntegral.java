package agro.generation;

import java.util.Arrays;
import org.hipparchus.util.FastMath;

/**
 * Log likelihood of the counts of a season under way with the catch sizes of its flights integrated
 * out: Newton's method on their logarithms, then Laplace's approximation. One object serves many
 * neighbouring pairs of start and interval, each search beginning where the last one ended. Not for
 * several threads.
 */
final class CatchIntegral {

  private static final int NEWTON_STEPS = 20;
  private static final int HALVINGS = 8;
  private static final double AT_REST = 1e-5;

  /** A visit that sees less of every flight than this has nothing but strays. */
  private static final double SEES_NOTHING = 1e-11;

  private final CatchData data;
  private final NewSeasonPrior prior;
  private final double size;

  /** What the counts of one visit tell, as a part of what independent counts would. */
  private final double information;

  private final double[] strayLog;
  private final double strays;
  private final int[] active;
  private final double[][] log;

  private double[][] share;
  private int seen;
  private int actives;
  private double[] score;
  private double[][] curvature;

  /**
   * Takes the counts.
   *
   * @param data visits so far
   * @param prior what past seasons say of the catch sizes
   * @param size size of the negative binomial of one open trap-night
   * @param information 1 for independent counts, less where running visits tell the same
   */
  CatchIntegral(CatchData data, NewSeasonPrior prior, double size, double information) {
    this.data = data;
    this.prior = prior;
    this.size = size;
    this.information = information;
    strayLog = new double[data.visits()];
    for (var v = 0; v < strayLog.length; v++) {
      strayLog[v] = logChance(v, stray(v));
    }
    strays = Arrays.stream(strayLog).sum();
    active = new int[strayLog.length];
    log = new double[prior.logCatchMean.length + 1][];
  }

  private double stray(int visit) {
    return CatchModel.STRAYS_PER_NIGHT * data.nightsOpen[visit];
  }

  /**
   * The log likelihood.
   *
   * @param shares share of each flight that each visit saw
   * @param flights number of flights that have begun
   * @return up to a constant
   */
  double logValue(double[][] shares, int flights) {
    if (flights == 0) {
      return information * strays;
    }
    begin(shares, flights);
    var at = log[flights];
    var value = evaluate(at, true);
    for (var step = 0; step < NEWTON_STEPS; step++) {
      var gain = climb(at, value);
      if (gain < 0) {
        break;
      }
      value = evaluate(at, true);
      if (gain < AT_REST) {
        break;
      }
    }
    var correction = 0.0;
    for (var g = 0; g < seen; g++) {
      correction += FastMath.log(prior.logCatchSd[g]);
    }
    return value - correction - 0.5 * Cholesky.logDeterminant(copy(curvature));
  }

  private void begin(double[][] shares, int flights) {
    share = shares;
    if (seen != flights) {
      seen = flights;
      score = new double[seen];
      curvature = new double[seen][seen];
    }
    if (log[seen] == null) {
      log[seen] = Arrays.copyOf(prior.logCatchMean, seen);
    }
    actives = 0;
    for (var v = 0; v < strayLog.length; v++) {
      for (var g = 0; g < seen; g++) {
        if (share[g][v] > SEES_NOTHING) {
          active[actives++] = v;
          break;
        }
      }
    }
  }

  /** One step of Newton, shortened until it does not descend; negative when nothing is gained. */
  private double climb(double[] at, double value) {
    // The curvature is positive definite, for the prior adds to its diagonal.
    var move = score.clone();
    Cholesky.solve(copy(curvature), move);
    var candidate = new double[seen];
    var fraction = 1.0;
    for (var half = 0; half < HALVINGS; half++) {
      for (var g = 0; g < seen; g++) {
        candidate[g] = at[g] + fraction * move[g];
      }
      var next = evaluate(candidate, false);
      if (next >= value) {
        System.arraycopy(candidate, 0, at, 0, seen);
        return next - value;
      }
      fraction /= 2;
    }
    return -1;
  }

  private static double[][] copy(double[][] matrix) {
    return Arrays.stream(matrix).map(double[]::clone).toArray(double[][]::new);
  }

  private double evaluate(double[] at, boolean derivatives) {
    var value = 0.0;
    var catches = new double[seen];
    for (var g = 0; g < seen; g++) {
      var z = (at[g] - prior.logCatchMean[g]) / prior.logCatchSd[g];
      value -= 0.5 * z * z;
      catches[g] = FastMath.exp(at[g]);
      if (derivatives) {
        score[g] = -z / prior.logCatchSd[g];
        Arrays.fill(curvature[g], 0);
        curvature[g][g] = 1 / (prior.logCatchSd[g] * prior.logCatchSd[g]);
      }
    }
    var part = new double[seen];
    var counts = strays;
    for (var k = 0; k < actives; k++) {
      var v = active[k];
      var mean = stray(v);
      for (var g = 0; g < seen; g++) {
        part[g] = catches[g] * share[g][v];
        mean += part[g];
      }
      counts += logChance(v, mean) - strayLog[v];
      if (derivatives) {
        addDerivatives(v, mean, part);
      }
    }
    return value + information * counts;
  }

  private double logChance(int visit, double mean) {
    var visitSize = size * data.nightsOpen[visit];
    return data.full[visit]
        ? FastMath.log(
            FastMath.max(
                1e-300, NegativeBinomial.chanceOfAtLeast(data.count[visit], mean, visitSize)))
        : NegativeBinomial.logOdds(data.count[visit], mean, visitSize);
  }

  private void addDerivatives(int v, double mean, double[] part) {
    var visitSize = size * data.nightsOpen[v];
    var inverse = information / NegativeBinomial.variance(mean, visitSize);
    var count =
        data.full[v]
            ? NegativeBinomial.meanOfAtLeast(data.count[v], mean, visitSize)
            : data.count[v];
    for (var g = 0; g < seen; g++) {
      score[g] += part[g] * inverse * (count - mean);
      for (var h = 0; h < seen; h++) {
        curvature[g][h] += part[g] * inverse * part[h];
      }
    }
  }
}
