package agro.generation;

import agro.report.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
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

  /** A pair of less weight moves no quantile. */
  private static final double NO_WEIGHT = 1e-12;

  /** How much higher the weight may be between the pairs of the coarse grid than at them. */
  private static final double BETWEEN_PAIRS_LOG = 12;

  private final CatchData data;
  private final FlightShape shape;
  private final NewSeasonPrior prior;
  private final CatchIntegral catches;
  private final int generations;
  private final Map<Integer, double[][]> sortedPairs = new HashMap<>();

  /** Grid of starts and intervals with the weight of each pair, weights adding up to one. */
  double[] starts;

  double[] intervals;
  double[][] weight;

  SeasonPosterior(CatchData data, FlightTimingFit fit, NewSeasonPrior prior) {
    this.data = data;
    this.prior = prior;
    shape = fit.shape();
    catches = new CatchIntegral(data, prior, fit.sizePerNight(), information(fit));
    generations = prior.logCatchMean.length;
  }

  /**
   * What a count tells as a part of what independent counts would. Where activity strays together
   * from visit to visit with correlation r, a mean over many visits has {@code (1 + r) / (1 - r)}
   * times the variance that it had otherwise, as a mean of autoregressive errors of first order
   * has.
   */
  static double information(FlightTimingFit fit) {
    var correlation = fit.residualCorrelation();
    return correlation > 0 ? (1 - correlation) / (1 + correlation) : 1;
  }

  /** Evaluates the grid: coarsely over the prior, then finely where it matters. */
  SeasonPosterior run(IntervalRange range, double lastKnown, Progress progress) {
    intervals =
        grid(
            FastMath.max(range.low().degreeDaysC(), prior.interval.quantile(TAIL)),
            FastMath.min(range.high().degreeDaysC(), prior.interval.quantile(1 - TAIL)),
            COARSE);
    starts = startGrid(lastKnown);
    evaluate(progress, 0, (i, j) -> true);
    var startSpan = span(starts, true);
    var intervalSpan = span(intervals, false);
    var worth = new WorthwhilePairs(starts, intervals, weight, NEGLIGIBLE_LOG + BETWEEN_PAIRS_LOG);
    starts = starts.length == 1 ? starts : grid(startSpan[0], startSpan[1], FINE);
    intervals = grid(intervalSpan[0], intervalSpan[1], FINE);
    evaluate(progress, HALF, (i, j) -> worth.near(starts[i], intervals[j]));
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

  /** Covariance of start and interval. */
  double covariance() {
    var startMean = 0.0;
    var intervalMean = 0.0;
    var product = 0.0;
    for (var i = 0; i < starts.length; i++) {
      for (var j = 0; j < intervals.length; j++) {
        startMean += weight[i][j] * starts[i];
        intervalMean += weight[i][j] * intervals[j];
        product += weight[i][j] * starts[i] * intervals[j];
      }
    }
    return product - startMean * intervalMean;
  }

  /** Equally likely values of the middle of a flight, in °C·d since the season's first day. */
  double[] quantiles(int generation, int count) {
    return Arrays.stream(outcomes(generation, count)).mapToDouble(outcome -> outcome[0]).toArray();
  }

  /**
   * Equally likely values of the middle of a flight in °C·d since the season's first day, each with
   * the interval of the pair that it comes from.
   */
  double[][] outcomes(int generation, int count) {
    var pairs = sorted(generation);
    var values = new double[count][];
    var next = 0;
    var below = 0.0;
    for (var pair : pairs) {
      below += pair[1];
      while (next < count && below >= (next + 0.5) / count) {
        values[next++] = new double[] {pair[0], pair[2]};
      }
    }
    var last = pairs[pairs.length - 1];
    for (; next < count; next++) {
      values[next] = new double[] {last[0], last[2]};
    }
    return values;
  }

  /** Middle, weight and interval of the pairs that weigh anything, early middles first. */
  private double[][] sorted(int generation) {
    return sortedPairs.computeIfAbsent(
        generation,
        g -> {
          var pairs = new ArrayList<double[]>();
          for (var i = 0; i < starts.length; i++) {
            for (var j = 0; j < intervals.length; j++) {
              if (weight[i][j] > NO_WEIGHT) {
                var middle = starts[i] + (g - 1) * intervals[j];
                pairs.add(new double[] {middle, weight[i][j], intervals[j]});
              }
            }
          }
          pairs.sort(Comparator.comparingDouble(pair -> pair[0]));
          return pairs.toArray(double[][]::new);
        });
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

  /** Whether a pair of the grid is worth its likelihood. */
  private interface Choice {
    boolean take(int start, int interval);
  }

  private void evaluate(Progress progress, long before, Choice choice) {
    weight = new double[starts.length][intervals.length];
    var dependence = new StartAndInterval(prior, starts, intervals);
    for (var i = 0; i < starts.length; i++) {
      progress.step(WORK, before + HALF * i / starts.length, 2 * HALF);
      for (var j = 0; j < intervals.length; j++) {
        if (!choice.take(i, j)) {
          weight[i][j] = Double.NEGATIVE_INFINITY;
          continue;
        }
        weight[i][j] =
            prior.interval.logDensity(intervals[j])
                + (prior.start == null || prior.startKnown.isPresent()
                    ? 0
                    : prior.start.logDensity(starts[i]))
                + dependence.logDensity(i, j)
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
    return catches.logValue(share, seen);
  }

  private double[] shares(int g, double start, double interval) {
    return data.shares(shape.curve(), start + g * interval, shape.scaleDegreeDaysC(g + 1));
  }
}
