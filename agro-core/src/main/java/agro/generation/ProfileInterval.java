package agro.generation;

import agro.report.Progress;
import agro.units.ThermalTime;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/** The 90 % profile likelihood interval of K over all seasons. */
final class ProfileInterval {

  /** Half of the 0.90 quantile of chi-squared with 1 degree of freedom, 2.705543. */
  private static final double DROP = 2.705543454095416 / 2;

  private static final double ACCURACY_DEGREE_DAYS = 0.01;
  private static final int MOST_EVALUATIONS = 60;

  private static final String WORK = "accuracy of the interval";
  private static final long USUAL_FITS = 24;

  private final CatchFit best;
  private final Progress progress;
  private long fits;

  ProfileInterval(CatchFit best, Progress progress) {
    this.best = best;
    this.progress = progress;
  }

  PooledInterval run(FlightTiming timing) {
    var estimate = best.parameters[best.model().intervalIndex()];
    var low = timing.range().low().degreeDaysC();
    var high = timing.range().high().degreeDaysC();
    UnivariateFunction excess = k -> profile(k, timing) - (best.objective - DROP);
    var interval =
        new PooledInterval(
            new ThermalTime(estimate),
            new ThermalTime(limit(excess, low, estimate, true)),
            new ThermalTime(limit(excess, estimate, high, false)),
            best.atBoundary());
    progress.step(WORK, USUAL_FITS, USUAL_FITS);
    return interval;
  }

  /** Walks out from the estimate in growing steps, then solves for the crossing. */
  private static double limit(UnivariateFunction excess, double low, double high, boolean below) {
    var from = below ? high : low;
    var edge = below ? low : high;
    var step = Math.max(ACCURACY_DEGREE_DAYS, 0.004 * from);
    var inside = from;
    while (inside != edge) {
      var next = below ? Math.max(edge, inside - step) : Math.min(edge, inside + step);
      if (excess.value(next) < 0) {
        return new BrentSolver(ACCURACY_DEGREE_DAYS)
            .solve(MOST_EVALUATIONS, excess, Math.min(inside, next), Math.max(inside, next));
      }
      inside = next;
      step *= 2;
    }
    return edge;
  }

  private double profile(double interval, FlightTiming timing) {
    progress.step(WORK, Math.min(fits++, USUAL_FITS - 1), USUAL_FITS);
    var model = best.model();
    var start = best.parameters.clone();
    start[model.intervalIndex()] = interval;
    var free = new boolean[model.parameters()];
    for (var i = 0; i < free.length; i++) {
      free[i] = i != model.intervalIndex() && best.isFree(i);
    }
    return new CatchFit(
            model,
            new WeakPrior(model, timing.range().expected().degreeDaysC()),
            free,
            timing.range().low().degreeDaysC(),
            timing.range().high().degreeDaysC())
        .maximise(start, best.size, true)
        .objective;
  }
}
