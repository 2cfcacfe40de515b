package agro.generation;

import agro.report.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The interval of each season alone, with the form of the flights and the size of the counts taken
 * from all seasons together, for every season that shows two flights apart.
 */
final class SeasonwiseIntervals {

  private static final double VALLEY = 1.0 / 3;
  private static final double FITTED_VALLEY = 0.5;
  private static final double NEAR_MEDIAN_IN_SCALES = 2;
  private static final int LEAST_PEAK_CATCH = 3;

  private final CatchFit pooled;
  private final IntervalRange range;
  private final double[] starts;
  private final CatchFit[] alone;

  SeasonwiseIntervals(CatchFit pooled, IntervalRange range) {
    this.pooled = pooled;
    this.range = range;
    starts = new double[pooled.model().seasons.size()];
    alone = new CatchFit[starts.length];
    for (var s = 0; s < starts.length; s++) {
      starts[s] = pooled.model().middle(s, 0, pooled.parameters);
    }
  }

  /** Fits some seasons alone, whether or not their flights stand apart in these counts. */
  List<Optional<Double>> of(List<Integer> seasons) {
    var intervals = new ArrayList<Optional<Double>>();
    for (var s : seasons) {
      intervals.add(fitAlone(s));
    }
    return intervals;
  }

  /** The fit of one season alone; null where it was not fitted or ended at the range's edge. */
  CatchFit alone(int season) {
    return alone[season];
  }

  /** Means by year, for sites of one year share its weather and are no replicates of each other. */
  static List<Double> byYear(List<CatchData> seasons, List<Optional<Double>> intervals) {
    var years = new TreeMap<Integer, List<Double>>();
    for (var s = 0; s < intervals.size(); s++) {
      var year = seasons.get(s).year;
      intervals.get(s).ifPresent(k -> years.computeIfAbsent(year, y -> new ArrayList<>()).add(k));
    }
    return years.values().stream()
        .map(ks -> ks.stream().mapToDouble(k -> k).average().orElseThrow())
        .toList();
  }

  /** One interval a season; nothing where its flights do not stand apart or the range sets it. */
  List<Optional<Double>> run(Progress progress) {
    var intervals = new ArrayList<Optional<Double>>();
    for (var s = 0; s < starts.length; s++) {
      progress.step("interval season by season", s, starts.length);
      intervals.add(standApart(s) ? fitAlone(s) : Optional.empty());
    }
    progress.step("interval season by season", starts.length, starts.length);
    return intervals;
  }

  /** Median of the first flight: the season's own where it was fitted alone. */
  double start(int season) {
    return starts[season];
  }

  private Optional<Double> fitAlone(int season) {
    var all = pooled.model();
    var model =
        new CatchModel(List.of(all.seasons.get(season)), all.generations, all.arrivals, all.curve);
    var start = new double[model.parameters()];
    var free = new boolean[start.length];
    Arrays.fill(free, true);
    var from = all.columnsOf(season);
    var to = model.columnsOf(0);
    for (var i = 0; i < to.length; i++) {
      start[to[i]] = pooled.parameters[from[i]];
    }
    free[0] = pooled.isFree(season);
    free[model.firstScaleIndex()] = false;
    free[model.addedScaleIndex()] = false;
    var fit =
        new CatchFit(
                model,
                new WeakPrior(model, range.expected().degreeDaysC()),
                free,
                range.low().degreeDaysC(),
                range.high().degreeDaysC())
            .maximise(start, pooled.size, false);
    if (fit.atBoundary()) {
      return Optional.empty();
    }
    alone[season] = fit;
    starts[season] = model.middle(0, 0, fit.parameters);
    return Optional.of(fit.parameters[model.intervalIndex()]);
  }

  /**
   * Whether two running flights show as peaks with a visit below a third of both between them.
   * Rates are catches per open trap-night; a peak is the best visit near the fitted middle of its
   * flight. The fitted curve must dip at that visit too, below half of both, for a cold week or
   * chance makes a low visit in the middle of a flight as well.
   */
  private boolean standApart(int season) {
    for (var g = 0; g + 1 < pooled.model().generations; g++) {
      var first = peak(season, g);
      var second = peak(season, g + 1);
      if (first >= 0 && second > first && hasValley(season, first, second)) {
        return true;
      }
    }
    return false;
  }

  private int peak(int season, int g) {
    var model = pooled.model();
    var data = model.seasons.get(season);
    var scale = model.shape(pooled.parameters).scaleDegreeDaysC(g + 1);
    var median = model.middle(season, g, pooled.parameters);
    var best = -1;
    for (var v = 0; v < data.visits(); v++) {
      var middle = 0.5 * (data.fromDegreeDaysC[v] + data.toDegreeDaysC[v]);
      if (Math.abs(middle - median) <= NEAR_MEDIAN_IN_SCALES * scale
          && data.count[v] >= LEAST_PEAK_CATCH
          && (best < 0 || rate(data, v) > rate(data, best))) {
        best = v;
      }
    }
    return best;
  }

  private boolean hasValley(int season, int first, int second) {
    var data = pooled.model().seasons.get(season);
    var limit = VALLEY * Math.min(rate(data, first), rate(data, second));
    var fittedLimit = FITTED_VALLEY * Math.min(fitted(season, first), fitted(season, second));
    for (var v = 0; v < data.visits(); v++) {
      if (data.fromDegreeDaysC[v] >= data.toDegreeDaysC[first]
          && data.toDegreeDaysC[v] <= data.fromDegreeDaysC[second]
          && rate(data, v) < limit
          && fitted(season, v) < fittedLimit) {
        return true;
      }
    }
    return false;
  }

  /** The fitted curve in the middle of a visit, in adults per trap and °C·d. */
  private double fitted(int season, int visit) {
    var model = pooled.model();
    var data = model.seasons.get(season);
    var middle = 0.5 * (data.fromDegreeDaysC[visit] + data.toDegreeDaysC[visit]);
    return model.catchPerDegreeDay(season, middle, pooled.parameters);
  }

  private static double rate(CatchData data, int visit) {
    return data.count[visit] / data.nightsOpen[visit];
  }
}
