package agro.generation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Starting points for the fit: for an interval K, the medians of the first flight that explain the
 * counts best, first one for all seasons, then season by season near it, so that the same flight is
 * called the first one in every season.
 */
final class FlightStarts {

  private static final int COMMON_STEPS = 24;
  private static final int SEASON_STEPS = 11;
  private static final double SEASON_REACH_IN_INTERVALS = 0.35;
  private static final double TRIAL_SIZE_PER_NIGHT = 0.7;
  private static final int CATCH_ROUNDS = 6;
  private static final double LEAST_EXPOSURE = 0.02;

  private final List<CatchData> seasons;
  private final int generations;
  private final FlightCurve curve;

  FlightStarts(List<CatchData> seasons, int generations, FlightCurve curve) {
    this.seasons = seasons;
    this.generations = generations;
    this.curve = curve;
  }

  /** Where a fit may start. */
  static final class Start {
    /** Interval K in °C·d. */
    final double interval;

    /** Medians of the first flight, one a season, in °C·d. */
    final double[] medians;

    /** How well this start explains the counts before any fitting. */
    final double logLikelihood;

    Start(double interval, double[] medians, double logLikelihood) {
      this.interval = interval;
      this.medians = medians;
      this.logLikelihood = logLikelihood;
    }
  }

  /** The starts of a grid of intervals that explain the counts better than their neighbours. */
  List<Start> bestOf(double[] intervals) {
    var all = Arrays.stream(intervals).mapToObj(this::at).toList();
    var best = new ArrayList<Start>();
    for (var i = 0; i < all.size(); i++) {
      var value = all.get(i).logLikelihood;
      var before = i > 0 ? all.get(i - 1).logLikelihood : Double.NEGATIVE_INFINITY;
      var after = i + 1 < all.size() ? all.get(i + 1).logLikelihood : Double.NEGATIVE_INFINITY;
      if (value > before && value >= after) {
        best.add(all.get(i));
      }
    }
    return best;
  }

  private Start at(double interval) {
    var firstCatches =
        seasons.stream()
            .mapToDouble(CatchData::firstCatchDegreeDaysC)
            .filter(Double::isFinite)
            .toArray();
    var low = Arrays.stream(firstCatches).min().orElse(0) - 0.2 * interval;
    var high = Arrays.stream(firstCatches).max().orElse(0) + 0.8 * interval;
    var common = low;
    var best = Double.NEGATIVE_INFINITY;
    for (var i = 0; i < COMMON_STEPS; i++) {
      var median = low + (high - low) * i / (COMMON_STEPS - 1);
      var fit = 0.0;
      for (var season : seasons) {
        fit += quickLogLikelihood(season, median, interval);
      }
      if (fit > best) {
        best = fit;
        common = median;
      }
    }
    var medians = new double[seasons.size()];
    var sum = 0.0;
    for (var s = 0; s < medians.length; s++) {
      medians[s] = nearby(seasons.get(s), common, interval);
      sum += quickLogLikelihood(seasons.get(s), medians[s], interval);
    }
    return new Start(interval, medians, sum);
  }

  private double nearby(CatchData season, double common, double interval) {
    var median = common;
    var best = Double.NEGATIVE_INFINITY;
    for (var i = 0; i < SEASON_STEPS; i++) {
      var reach = SEASON_REACH_IN_INTERVALS * interval;
      var candidate = common - reach + 2 * reach * i / (SEASON_STEPS - 1);
      var fit = quickLogLikelihood(season, candidate, interval);
      if (fit > best) {
        best = fit;
        median = candidate;
      }
    }
    return median;
  }

  /**
   * Catch sizes by a few rounds of the mixture's multiplicative update, then the likelihood up to a
   * constant.
   */
  private double quickLogLikelihood(CatchData season, double median, double interval) {
    var share = new double[generations][];
    var exposure = new double[generations];
    for (var g = 0; g < generations; g++) {
      var scale = WeakPrior.FIRST_SCALE_IN_INTERVALS * interval * FastMath.sqrt(1.0 + g);
      share[g] = season.shares(curve, median + g * interval, scale);
      for (var each : share[g]) {
        exposure[g] += each;
      }
    }
    var sizes = new double[generations];
    Arrays.fill(sizes, (season.totalCatch() + 1.0) / generations);
    for (var round = 0; round < CATCH_ROUNDS; round++) {
      updateSizes(season, share, exposure, sizes);
    }
    var sum = 0.0;
    for (var v = 0; v < season.visits(); v++) {
      sum +=
          NegativeBinomial.logOdds(
              season.count[v],
              mean(season, v, share, sizes),
              TRIAL_SIZE_PER_NIGHT * season.nightsOpen[v]);
    }
    return sum;
  }

  private double mean(CatchData season, int visit, double[][] share, double[] sizes) {
    var mean = CatchModel.STRAYS_PER_NIGHT * season.nightsOpen[visit];
    for (var g = 0; g < generations; g++) {
      mean += sizes[g] * share[g][visit];
    }
    return mean;
  }

  /** Visits without a catch add nothing to the update. */
  private void updateSizes(CatchData season, double[][] share, double[] exposure, double[] sizes) {
    var ratio = new double[generations];
    for (var v : season.withCatch) {
      var perAdult = season.count[v] / mean(season, v, share, sizes);
      for (var g = 0; g < generations; g++) {
        ratio[g] += share[g][v] * perAdult;
      }
    }
    for (var g = 0; g < generations; g++) {
      sizes[g] *= exposure[g] > LEAST_EXPOSURE ? ratio[g] / exposure[g] : 1;
    }
  }
}
