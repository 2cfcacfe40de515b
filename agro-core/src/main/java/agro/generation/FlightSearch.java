package agro.generation;

import agro.report.Progress;
import agro.units.ThermalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.util.FastMath;

/**
 * Looks for all explanations of the counts: for each number of generations the fit is started from
 * a grid of intervals, and every local maximum is kept.
 */
final class FlightSearch {

  private static final int INTERVALS = 15;
  private static final int MOST_GENERATIONS = 6;
  private static final double START_SIZE = 0.7;
  private static final double VISIBLE_SHARE = 0.01;
  private static final double SHOWN_SHARE = 0.05;
  private static final double NEAR_BIC = 5 * FlightMode.RIVAL_BIC;
  private static final double[] DELAYS_IN_INTERVALS = {0.2, 0.35, 0.5};

  /** Two arrivals that looked like one flight are narrower than it, by a factor of e^0.3. */
  private static final double NARROWER = 0.3;

  private final List<CatchData> seasons;
  private final FlightTiming timing;
  private final double[] givenMedians;

  /**
   * Takes what every start shares.
   *
   * @param givenMedians medians of the first flights that are given, NaN where they are estimated
   */
  FlightSearch(List<CatchData> seasons, FlightTiming timing, double[] givenMedians) {
    this.seasons = seasons;
    this.timing = timing;
    this.givenMedians = givenMedians;
  }

  /** One local maximum with its fit. */
  record Found(FlightMode mode, CatchFit fit) {}

  /** All distinct local maxima, the best by information criterion first. */
  List<Found> run(Progress progress) {
    var found = new ArrayList<Found>();
    var most = mostGenerations();
    for (var generations = 1; generations <= most; generations++) {
      var shown = false;
      for (var start : starts(generations)) {
        progress.step("search of the interval", generations - 1L, most);
        var fit = fitFrom(generations, start);
        if (lastFlightShows(fit.fit())) {
          keep(found, fit);
          shown = true;
        }
      }
      if (!shown) {
        break; // a flight that no trap could see adds nothing, nor does one after it
      }
    }
    found.sort(Comparator.comparingDouble(each -> each.mode().bic()));
    if (timing.mostArrivals() > 1) {
      found.replaceAll(each -> nearTheBest(each, found) ? withArrivals(each) : each);
      found.sort(Comparator.comparingDouble(each -> each.mode().bic()));
    }
    progress.step("search of the interval", most, most);
    return found;
  }

  private static boolean nearTheBest(Found each, List<Found> found) {
    return each.mode().bic() - found.get(0).mode().bic() < NEAR_BIC;
  }

  /** The same explanation with more arrivals, as long as each lowers the criterion. */
  private Found withArrivals(Found plain) {
    var best = plain;
    for (var arrivals = 2; arrivals <= timing.mostArrivals(); arrivals++) {
      var more = fitArrivals(best.fit(), arrivals, DELAYS_IN_INTERVALS[0]);
      for (var i = 1; i < DELAYS_IN_INTERVALS.length; i++) {
        var candidate = fitArrivals(best.fit(), arrivals, DELAYS_IN_INTERVALS[i]);
        more = candidate.mode().bic() < more.mode().bic() ? candidate : more;
      }
      if (more.mode().bic() >= best.mode().bic()) {
        break;
      }
      best = more;
    }
    return best;
  }

  private Found fitArrivals(CatchFit plain, int arrivals, double delayInIntervals) {
    var fewer = plain.model();
    var model = new CatchModel(seasons, fewer.generations, arrivals, timing.curve());
    var start = new double[model.parameters()];
    System.arraycopy(plain.parameters, 0, start, 0, fewer.catchIndex(seasons.size(), 0));
    var free = new boolean[start.length];
    Arrays.fill(free, true);
    for (var p = 0; p <= model.addedScaleIndex(); p++) {
      free[p] = plain.isFree(p);
    }
    var delay = delayInIntervals * timing.range().expected().degreeDaysC();
    for (var s = 0; s < seasons.size(); s++) {
      start[s] -= free[s] ? 0.5 * delay : 0;
      for (var a = 1; a < fewer.arrivals; a++) {
        start[model.delayIndex(s, a)] = plain.parameters[fewer.delayIndex(s, a)];
        start[model.shareIndex(s, a)] = plain.parameters[fewer.shareIndex(s, a)];
      }
      start[model.delayIndex(s, arrivals - 1)] = FastMath.log(delay);
    }
    start[model.firstScaleIndex()] -= NARROWER;
    return fitted(model, free, start, plain.size);
  }

  private List<FlightStarts.Start> starts(int generations) {
    var low = timing.range().low().degreeDaysC();
    var high = timing.range().high().degreeDaysC();
    var grid =
        generations == 1
            ? new double[] {timing.range().expected().degreeDaysC()}
            : new double[INTERVALS];
    for (var i = 0; generations > 1 && i < INTERVALS; i++) {
      grid[i] = low + (high - low) * i / (INTERVALS - 1);
    }
    return new FlightStarts(seasons, generations, timing.curve()).bestOf(grid);
  }

  private static boolean lastFlightShows(CatchFit fit) {
    var model = fit.model();
    for (var s = 0; s < model.seasons.size(); s++) {
      if (model.visibleShare(s, model.generations - 1, fit.parameters) > SHOWN_SHARE) {
        return true;
      }
    }
    return model.generations == 1;
  }

  private int mostGenerations() {
    var span = 0.0;
    for (var season : seasons) {
      var first = season.firstCatchDegreeDaysC();
      if (Double.isFinite(first)) {
        span = Math.max(span, season.lastDegreeDaysC() - first);
      }
    }
    return Math.min(
        MOST_GENERATIONS, 1 + (int) Math.ceil(span / timing.range().low().degreeDaysC()));
  }

  private Found fitFrom(int generations, FlightStarts.Start from) {
    var model = new CatchModel(seasons, generations, timing.curve());
    var prior = new WeakPrior(model, timing.range().expected().degreeDaysC());
    var medians = from.medians.clone();
    var free = new boolean[model.parameters()];
    Arrays.fill(free, true);
    free[model.intervalIndex()] = generations > 1;
    free[model.addedScaleIndex()] = generations > 1;
    for (var s = 0; s < medians.length; s++) {
      if (!Double.isNaN(givenMedians[s])) {
        medians[s] = givenMedians[s];
        free[s] = false;
      }
    }
    return fitted(model, free, prior.start(medians, from.interval), START_SIZE);
  }

  private Found fitted(CatchModel model, boolean[] free, double[] start, double size) {
    var fit =
        new CatchFit(
                model,
                new WeakPrior(model, timing.range().expected().degreeDaysC()),
                free,
                timing.range().low().degreeDaysC(),
                timing.range().high().degreeDaysC())
            .maximise(start, size, true);
    var k = new ThermalTime(fit.parameters[model.intervalIndex()]);
    return new Found(
        new FlightMode(
            model.generations,
            model.generations > 1 ? Optional.of(k) : Optional.empty(),
            fit.logLikelihood,
            bic(fit, free),
            model.arrivals),
        fit);
  }

  /** Catch sizes of flights that the traps could not see are no parameters of the data. */
  private static double bic(CatchFit fit, boolean[] free) {
    var model = fit.model();
    var count = 1; // the size
    for (var p = 0; p <= model.addedScaleIndex(); p++) {
      count += free[p] ? 1 : 0;
    }
    for (var s = 0; s < model.seasons.size(); s++) {
      for (var g = 0; g < model.generations; g++) {
        count += model.visibleShare(s, g, fit.parameters) > VISIBLE_SHARE ? 1 : 0;
      }
      count += 2 * (model.arrivals - 1);
    }
    return -2 * fit.logLikelihood + count * FastMath.log(model.visits());
  }

  private static void keep(List<Found> found, Found candidate) {
    for (var i = 0; i < found.size(); i++) {
      var mode = found.get(i).mode();
      if (mode.generations() == candidate.mode().generations()
          && !mode.contradicts(candidate.mode())) {
        if (candidate.fit().objective > found.get(i).fit().objective) {
          found.set(i, candidate);
        }
        return;
      }
    }
    found.add(candidate);
  }
}
