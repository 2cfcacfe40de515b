package agro.generation;

import agro.report.Progress;
import java.util.Arrays;
import java.util.Comparator;
import org.hipparchus.util.FastMath;

/**
 * Start and interval of the season under way: the prior of a new season times the likelihood of the
 * counts so far, on a grid. The catch sizes are integrated out by Laplace's approximation.
 */
final class SeasonPosterior {

  private static final String WORK = "season under way";
  private static final long HALF = 100;
  private static final int COARSE = 41;
  private static final int FINE = 81;
  private static final double TAIL = 0.001;
  private static final double NEGLIGIBLE_LOG = 16;
  private static final int NEWTON_STEPS = 12;

  private final CatchData data;
  private final FlightShape shape;
  private final NewSeasonPrior prior;
  private final double size;
  private final int generations;

  /** Grid of starts and intervals with the weight of each pair, weights adding up to one. */
  double[] starts;

  double[] intervals;
  double[][] weight;

  SeasonPosterior(CatchData data, FlightTimingFit fit, NewSeasonPrior prior) {
    this.data = data;
    this.prior = prior;
    shape = fit.shape();
    size = fit.sizePerNight();
    generations = prior.logCatchMean.length;
  }

  /** Evaluates the grid: coarsely over the prior, then finely where it matters. */
  SeasonPosterior run(IntervalRange range, double lastKnown, Progress progress) {
    intervals =
        grid(
            FastMath.max(range.low().degreeDaysC(), prior.interval.quantile(TAIL)),
            FastMath.min(range.high().degreeDaysC(), prior.interval.quantile(1 - TAIL)),
            COARSE);
    starts = startGrid(lastKnown);
    evaluate(progress, 0);
    var startSpan = span(starts, true);
    var intervalSpan = span(intervals, false);
    starts = starts.length == 1 ? starts : grid(startSpan[0], startSpan[1], FINE);
    intervals = grid(intervalSpan[0], intervalSpan[1], FINE);
    evaluate(progress, HALF);
    normalise();
    progress.step(WORK, 2 * HALF, 2 * HALF);
    return this;
  }

  /** Mean and variance of the middle of a flight, in °C·d since the season's first day. */
  record Moments(double mean, double variance) {}

  Moments moments(int generation) {
    var sum = 0.0;
    var squares = 0.0;
    for (var i = 0; i < starts.length; i++) {
      for (var j = 0; j < intervals.length; j++) {
        var middle = starts[i] + (generation - 1) * intervals[j];
        sum += weight[i][j] * middle;
        squares += weight[i][j] * middle * middle;
      }
    }
    return new Moments(sum, FastMath.max(0, squares - sum * sum));
  }

  double startVariance() {
    return moments(1).variance();
  }

  double intervalVariance() {
    var sum = 0.0;
    var squares = 0.0;
    for (var row : weight) {
      for (var j = 0; j < intervals.length; j++) {
        sum += row[j] * intervals[j];
        squares += row[j] * intervals[j] * intervals[j];
      }
    }
    return FastMath.max(0, squares - sum * sum);
  }

  /** Equally likely values of the middle of a flight, in °C·d since the season's first day. */
  double[] quantiles(int generation, int count) {
    var pairs = new double[starts.length * intervals.length][];
    for (var i = 0; i < starts.length; i++) {
      for (var j = 0; j < intervals.length; j++) {
        pairs[i * intervals.length + j] =
            new double[] {starts[i] + (generation - 1) * intervals[j], weight[i][j]};
      }
    }
    Arrays.sort(pairs, Comparator.comparingDouble(pair -> pair[0]));
    var values = new double[count];
    var next = 0;
    var below = 0.0;
    for (var pair : pairs) {
      below += pair[1];
      while (next < count && below >= (next + 0.5) / count) {
        values[next++] = pair[0];
      }
    }
    Arrays.fill(values, next, count, pairs[pairs.length - 1][0]);
    return values;
  }

  private double[] startGrid(double lastKnown) {
    if (prior.startKnown.isPresent()) {
      return new double[] {prior.startKnown.getAsDouble()};
    }
    if (prior.start == null) {
      return grid(0, lastKnown + prior.interval.mean(), 2 * COARSE);
    }
    // Further than a whole interval from the past starts it would be another flight; with few
    // seasons the tails of t reach so far that the grid would miss the middle.
    var reach = prior.interval.mean();
    var mean = prior.start.mean();
    return grid(
        FastMath.max(0, FastMath.max(mean - reach, prior.start.quantile(TAIL))),
        FastMath.min(mean + reach, prior.start.quantile(1 - TAIL)),
        2 * COARSE);
  }

  private static double[] grid(double low, double high, int points) {
    var grid = new double[points];
    Arrays.setAll(grid, i -> low + (high - low) * i / (points - 1));
    return grid;
  }

  private void evaluate(Progress progress, long before) {
    weight = new double[starts.length][intervals.length];
    for (var i = 0; i < starts.length; i++) {
      progress.step(WORK, before + HALF * i / starts.length, 2 * HALF);
      for (var j = 0; j < intervals.length; j++) {
        weight[i][j] =
            prior.interval.logDensity(intervals[j])
                + (prior.start == null || prior.startKnown.isPresent()
                    ? 0
                    : prior.start.logDensity(starts[i]))
                + logLikelihood(starts[i], intervals[j]);
      }
    }
  }

  /** Part of a grid, one cell wider, outside which the weights are negligible. */
  private double[] span(double[] axis, boolean rows) {
    var best = Arrays.stream(weight).flatMapToDouble(Arrays::stream).max().orElseThrow();
    var first = axis.length;
    var last = -1;
    for (var i = 0; i < weight.length; i++) {
      for (var j = 0; j < weight[i].length; j++) {
        if (weight[i][j] > best - NEGLIGIBLE_LOG) {
          first = Math.min(first, rows ? i : j);
          last = Math.max(last, rows ? i : j);
        }
      }
    }
    return new double[] {axis[Math.max(0, first - 1)], axis[Math.min(axis.length - 1, last + 1)]};
  }

  private void normalise() {
    var best = Arrays.stream(weight).flatMapToDouble(Arrays::stream).max().orElseThrow();
    var sum = 0.0;
    for (var row : weight) {
      for (var j = 0; j < row.length; j++) {
        row[j] = FastMath.exp(row[j] - best);
        sum += row[j];
      }
    }
    for (var row : weight) {
      for (var j = 0; j < row.length; j++) {
        row[j] /= sum;
      }
    }
  }

  /** Log likelihood of the counts with the catch sizes integrated out, up to a constant. */
  private double logLikelihood(double start, double interval) {
    var visits = data.visits();
    if (visits == 0) {
      return 0;
    }
    var share = new double[generations][];
    var seen = 0;
    for (var g = 0; g < generations; g++) {
      var shares = shares(g, start, interval);
      var ahead = start + g * interval > data.lastDegreeDaysC();
      if (ahead && Arrays.stream(shares).sum() < 1e-4) {
        break; // this flight and the later ones lie ahead; one behind may hide no later one
      }
      share[g] = shares;
      seen++;
    }
    return seen == 0 ? strays() : new CatchIntegral(share, seen).logValue();
  }

  private double[] shares(int g, double start, double interval) {
    var scale = shape.scaleDegreeDaysC(g + 1);
    var median = start + g * interval;
    var shares = new double[data.visits()];
    for (var v = 0; v < shares.length; v++) {
      shares[v] =
          data.trapsOpen[v]
              * (shape.curve().cumulative((data.toDegreeDaysC[v] - median) / scale)
                  - shape.curve().cumulative((data.fromDegreeDaysC[v] - median) / scale));
    }
    return shares;
  }

  private double strays() {
    var sum = 0.0;
    for (var v = 0; v < data.visits(); v++) {
      sum += logChance(v, CatchModel.STRAYS_PER_NIGHT * data.nightsOpen[v]);
    }
    return sum;
  }

  private double logChance(int visit, double mean) {
    var visitSize = size * data.nightsOpen[visit];
    return data.full[visit]
        ? FastMath.log(
            FastMath.max(
                1e-300, NegativeBinomial.chanceOfAtLeast(data.count[visit], mean, visitSize)))
        : NegativeBinomial.logOdds(data.count[visit], mean, visitSize);
  }

  /** Newton's method on the logarithms of the catch sizes, then Laplace's approximation. */
  private final class CatchIntegral {
    private final double[][] share;
    private final int seen;
    private final double[] log;
    private final double[] score;
    private final double[][] information;

    CatchIntegral(double[][] share, int seen) {
      this.share = share;
      this.seen = seen;
      log = Arrays.copyOf(prior.logCatchMean, seen);
      score = new double[seen];
      information = new double[seen][seen];
    }

    double logValue() {
      var value = evaluate(log, true);
      for (var step = 0; step < NEWTON_STEPS; step++) {
        var move = solve();
        var fraction = 1.0;
        var next = value;
        var candidate = log.clone();
        for (var half = 0; half < 8; half++) {
          for (var g = 0; g < seen; g++) {
            candidate[g] = log[g] + fraction * move[g];
          }
          next = evaluate(candidate, false);
          if (next >= value) {
            break;
          }
          fraction /= 2;
        }
        if (next < value) {
          break;
        }
        System.arraycopy(candidate, 0, log, 0, seen);
        var gain = next - value;
        value = evaluate(log, true);
        if (gain < 1e-5) {
          break;
        }
      }
      var correction = 0.0;
      for (var g = 0; g < seen; g++) {
        correction += FastMath.log(prior.logCatchSd[g]);
      }
      return value - correction - 0.5 * logDeterminant();
    }

    private double evaluate(double[] at, boolean derivatives) {
      var value = 0.0;
      for (var g = 0; g < seen; g++) {
        var z = (at[g] - prior.logCatchMean[g]) / prior.logCatchSd[g];
        value -= 0.5 * z * z;
        if (derivatives) {
          score[g] = -z / prior.logCatchSd[g];
          Arrays.fill(information[g], 0);
          information[g][g] = 1 / (prior.logCatchSd[g] * prior.logCatchSd[g]);
        }
      }
      var part = new double[seen];
      for (var v = 0; v < data.visits(); v++) {
        var mean = CatchModel.STRAYS_PER_NIGHT * data.nightsOpen[v];
        for (var g = 0; g < seen; g++) {
          part[g] = FastMath.exp(at[g]) * share[g][v];
          mean += part[g];
        }
        value += logChance(v, mean);
        if (derivatives) {
          addDerivatives(v, mean, part);
        }
      }
      return value;
    }

    private void addDerivatives(int v, double mean, double[] part) {
      var visitSize = size * data.nightsOpen[v];
      var inverse = 1 / NegativeBinomial.variance(mean, visitSize);
      var count =
          data.full[v]
              ? NegativeBinomial.meanOfAtLeast(data.count[v], mean, visitSize)
              : data.count[v];
      for (var g = 0; g < seen; g++) {
        score[g] += part[g] * inverse * (count - mean);
        for (var h = 0; h < seen; h++) {
          information[g][h] += part[g] * inverse * part[h];
        }
      }
    }

    private double[] solve() {
      var lower = cholesky();
      var x = score.clone();
      for (var i = 0; i < seen; i++) {
        for (var k = 0; k < i; k++) {
          x[i] -= lower[i][k] * x[k];
        }
        x[i] /= lower[i][i];
      }
      for (var i = seen - 1; i >= 0; i--) {
        for (var k = i + 1; k < seen; k++) {
          x[i] -= lower[k][i] * x[k];
        }
        x[i] /= lower[i][i];
      }
      return x;
    }

    private double logDeterminant() {
      var lower = cholesky();
      var sum = 0.0;
      for (var i = 0; i < seen; i++) {
        sum += 2 * FastMath.log(lower[i][i]);
      }
      return sum;
    }

    /** The information is positive definite, for the prior adds to its diagonal. */
    private double[][] cholesky() {
      var lower = new double[seen][seen];
      for (var i = 0; i < seen; i++) {
        for (var j = 0; j <= i; j++) {
          var sum = information[i][j];
          for (var k = 0; k < j; k++) {
            sum -= lower[i][k] * lower[j][k];
          }
          lower[i][j] = i == j ? FastMath.sqrt(sum) : sum / lower[j][j];
        }
      }
      return lower;
    }
  }
}
