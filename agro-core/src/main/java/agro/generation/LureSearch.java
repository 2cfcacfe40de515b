package agro.generation;

import agro.report.Progress;
import agro.report.ReadReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * The half-life of lures by profile likelihood: the best explanation under lures that do not fade
 * is fitted anew at other half-lives.
 */
final class LureSearch {

  private static final String WORK = "half-life of the lures";
  private static final int GRID = 9;
  private static final double ACCURACY_LOG = 1e-3;
  private static final double WALK_LOG = 0.15;
  private static final double LONGEST = Math.log(LureFade.LONGEST_DAYS);
  private static final double SHORTEST = Math.log(LureFade.SHORTEST_DAYS);

  /** Half of the 0.90 quantile of chi-squared with 1 degree of freedom. */
  private static final double DROP = 2.705543454095416 / 2;

  private final FlightTiming timing;
  private final List<ObservedSeason> seasons;
  private final Progress progress;

  LureSearch(FlightTiming timing, List<ObservedSeason> seasons, Progress progress) {
    this.timing = timing;
    this.seasons = seasons;
    this.progress = progress;
  }

  /** A half-life with the best explanation under it. */
  private record Step(double logDays, CatchFit fit) {
    double value() {
      return fit.objective;
    }
  }

  /** The estimate; nothing when nothing was caught. */
  Optional<LureEstimate> run() {
    var caught =
        seasons.stream()
            .filter(season -> data(season, LureFade.LONGEST_DAYS).totalCatch() > 0)
            .toList();
    if (caught.isEmpty()) {
      return Optional.empty();
    }
    var notFading = notFading(caught);
    var steps = new ArrayList<>(List.of(notFading));
    for (var i = 1; i < GRID; i++) {
      progress.step(WORK, i, GRID);
      steps.add(at(caught, LONGEST + (SHORTEST - LONGEST) * i / (GRID - 1), steps.get(i - 1)));
    }
    var best = refined(caught, steps);
    progress.step(WORK, GRID, GRID);
    return Optional.of(
        new LureEstimate(
            Math.exp(best.logDays),
            Math.exp(limit(caught, best, SHORTEST)),
            best.value() - notFading.value() <= DROP
                ? Double.POSITIVE_INFINITY
                : Math.exp(limit(caught, best, LONGEST)),
            best.value() - notFading.value()));
  }

  private Step notFading(List<ObservedSeason> caught) {
    var given =
        caught.stream()
            .mapToDouble(
                season ->
                    Optional.ofNullable(timing.givenStarts().get(season.year()))
                        .map(start -> FlightTimingProcedure.median(season, start))
                        .orElse(Double.NaN))
            .toArray();
    var fresh = caught.stream().map(season -> data(season, LureFade.LONGEST_DAYS)).toList();
    return new Step(LONGEST, new FlightSearch(fresh, timing, given).run(progress).get(0).fit());
  }

  /** Brent's method about the best step of the grid. */
  private Step refined(List<ObservedSeason> caught, List<Step> steps) {
    var top = 0;
    for (var i = 1; i < steps.size(); i++) {
      top = steps.get(i).value() > steps.get(top).value() ? i : top;
    }
    var from = steps.get(top);
    var low = steps.get(Math.min(steps.size() - 1, top + 1)).logDays;
    var high = steps.get(Math.max(0, top - 1)).logDays;
    var found =
        new BrentOptimizer(ACCURACY_LOG, ACCURACY_LOG)
            .optimize(
                new MaxEval(60),
                new UnivariateObjectiveFunction(x -> at(caught, x, from).value()),
                GoalType.MAXIMIZE,
                new SearchInterval(low, high))
            .getPoint();
    var fitted = at(caught, found, from);
    return fitted.value() > from.value() ? fitted : from;
  }

  /** Walks out from the estimate until the likelihood has dropped, each fit from the one before. */
  private double limit(List<ObservedSeason> caught, Step best, double edge) {
    var inside = best;
    var side = Math.signum(edge - best.logDays);
    while (Math.abs(edge - inside.logDays) > ACCURACY_LOG) {
      var far = inside.logDays + side * WALK_LOG;
      var next = at(caught, side * (edge - far) > 0 ? far : edge, inside);
      var drop = best.value() - next.value();
      if (drop > DROP) {
        var before = Math.sqrt(Math.max(0, best.value() - inside.value()));
        var share = (Math.sqrt(DROP) - before) / (Math.sqrt(drop) - before);
        return inside.logDays + share * (next.logDays - inside.logDays);
      }
      inside = next;
    }
    return edge;
  }

  /** The highest likelihood at a half-life, from a fit near by. */
  private Step at(List<ObservedSeason> caught, double logDays, Step near) {
    var data = caught.stream().map(season -> data(season, Math.exp(logDays))).toList();
    var before = near.fit.model();
    var model = new CatchModel(data, before.generations, before.arrivals, before.curve);
    var free = new boolean[model.parameters()];
    for (var p = 0; p < free.length; p++) {
      free[p] = near.fit.isFree(p);
    }
    return new Step(
        logDays,
        new CatchFit(
                model,
                new WeakPrior(model, timing.range().expected().degreeDaysC()),
                free,
                timing.range().low().degreeDaysC(),
                timing.range().high().degreeDaysC())
            .maximise(near.fit.parameters, near.fit.size, true));
  }

  private CatchData data(ObservedSeason season, double halfLifeDays) {
    return season.usable(
        timing.conditions().with(LureFade.halfLife(halfLifeDays)),
        new ReadReport.Collector("half-life of the lures"));
  }
}
