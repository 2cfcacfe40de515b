package agro.development.rate;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.stats.ConfidenceLimits;
import agro.stats.LevenbergMarquardt;
import agro.stats.ProfileSearch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.FDistribution;

/**
 * Profile intervals. A parameter or derived point is held at a value by one more residual that
 * outweighs all others, the rest is fitted, and the value is moved until the fit is just worse
 * enough.
 */
final class RateProfile {

  /** Weight of holding against the rest; what is held moves by less than a millionth of a step. */
  private static final double FIRM = 1e3;

  /** A limit this near to an edge of the search, as a share of the interval, is the edge. */
  private static final double EDGE = 1e-3;

  private final RateFit fit;
  private final RateSearch search;
  private final int parameters;
  private final double optimum;

  private RateProfile(RateFit fit) {
    this.fit = fit;
    search = new RateSearch(fit.fitting(), fit.points());
    parameters = search.low.length;
    optimum = fit.curve().derived(DerivedPoint.OPTIMUM).orElse(Double.NaN);
  }

  static RateIntervals intervals(RateFit fit, double level, Progress progress) {
    RateBootstrap.requireJudgeable(fit);
    if (!(level > 0 && level < 1)) {
      throw InputProblem.of("a level of " + level)
          .expected("a number between 0 and 1, such as 0.9")
          .because("it is the chance that an interval should hold the truth")
          .mend("give 0.9 or 0.95");
    }
    var profile = new RateProfile(fit);
    int columns = profile.parameters + DerivedPoint.values().length;
    var limits = new ArrayList<ConfidenceLimits>();
    for (int column = 0; column < columns; column++) {
      progress.step("profile", column, columns);
      limits.add(profile.limits(column, level));
    }
    progress.step("profile", columns, columns);
    return RateIntervals.ofProfile(fit, level, List.copyOf(limits));
  }

  private ConfidenceLimits limits(int column, double level) {
    double estimate = quantity(fit.found().coordinates(), column);
    boolean fixed = column < parameters && fit.fitting().fixed().containsKey(column);
    if (fixed || Double.isNaN(estimate)) {
      return new ConfidenceLimits(Double.NaN, Double.NaN);
    }
    double error = fit.found().standardErrors().get(column);
    double scale =
        error > 0 && Double.isFinite(error)
            ? Math.min(error, Math.max(0.2 * Math.abs(estimate), 1e-9))
            : 0.01 * Math.max(Math.abs(estimate), 1e-6);
    var limits =
        fit.fitting().distribution().isPresent()
            ? likelihood(column, estimate, scale, level)
            : leastSquares(column, estimate, scale, level);
    return column < parameters ? withoutEdges(limits, column) : limits;
  }

  /** A limit on the edge of the search is none that the data set. */
  private ConfidenceLimits withoutEdges(ConfidenceLimits limits, int column) {
    if (!search.equation.isDirect(column)) {
      return new ConfidenceLimits(Math.max(0, limits.low()), limits.high());
    }
    double near = EDGE * limits.width();
    return new ConfidenceLimits(
        limits.low() <= search.low[column] + near ? Double.NEGATIVE_INFINITY : limits.low(),
        limits.high() >= search.high[column] - near ? Double.POSITIVE_INFINITY : limits.high());
  }

  private ConfidenceLimits leastSquares(int column, double estimate, double scale, double level) {
    int left = fit.degreesOfFreedom();
    double f = new FDistribution(1, left).inverseCumulativeProbability(level);
    double limit = fit.sumOfSquares() * (1 + f / left);
    var held =
        new HeldResiduals(search.points, q -> quantity(q, column), FIRM * Math.sqrt(limit) / scale);
    var downhill =
        LevenbergMarquardt.within(search.points.observations() + 1, search.low, search.high);
    double[] best = fit.found().coordinates();
    double[][] last = {best};
    return ProfileSearch.limits(
        value -> {
          held.value = value;
          double least = Double.POSITIVE_INFINITY;
          double[] from = last[0];
          for (double[] start : new double[][] {best, from}) {
            var found = downhill.minimise(held, start);
            double[] q = found.parameters();
            double sum = search.points.sumOfSquares(q);
            boolean holds = Math.abs(quantity(q, column) - value) < 1e-3 * scale;
            if (holds && sum < least) {
              least = sum;
              last[0] = q;
            }
          }
          return least;
        },
        estimate,
        scale,
        fit.sumOfSquares(),
        limit);
  }

  private ConfidenceLimits likelihood(int column, double estimate, double scale, double level) {
    var durations =
        new DurationLikelihood(fit.fitting(), LikelihoodFit.used(fit.fitting(), fit.data()));
    double limit =
        fit.found().minusLogLikelihood()
            + 0.5 * new ChiSquaredDistribution(1).inverseCumulativeProbability(level);
    var newton = LikelihoodFit.newton(fit.fitting(), search);
    double[] best =
        LikelihoodFit.with(fit.found().coordinates(), Math.log(fit.found().dispersion()));
    double[][] last = {best};
    return ProfileSearch.limits(
        value -> {
          var found =
              newton.minimise(q -> durations.value(q) + holding(q, column, value, scale), last[0]);
          double[] q = found.parameters();
          boolean holds =
              Math.abs(quantity(Arrays.copyOf(q, parameters), column) - value) < 0.02 * scale;
          if (holds) {
            last[0] = q;
          }
          return holds ? durations.value(q) : Double.POSITIVE_INFINITY;
        },
        estimate,
        scale,
        fit.found().minusLogLikelihood(),
        limit);
  }

  private double holding(double[] q, int column, double value, double scale) {
    double apart = (quantity(Arrays.copyOf(q, parameters), column) - value) / scale;
    return 0.5 * FIRM * apart * apart;
  }

  private double quantity(double[] q, int column) {
    var constants = fit.fitting().constants();
    double[] p = search.equation.toParameters(q, constants);
    if (column < parameters) {
      return p[column];
    }
    return new CurvePoints(fit.curve().model().equation(), p, constants, optimum)
        .value(List.of(DerivedPoint.values()).get(column - parameters), fit.curve().model());
  }
}
