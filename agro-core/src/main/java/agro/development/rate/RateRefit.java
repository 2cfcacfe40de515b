package agro.development.rate;

import agro.report.InputProblem;
import agro.stats.LeastSquaresSolution;
import agro.stats.LevenbergMarquardt;
import agro.stats.Refit;
import agro.stats.RefitOutcome;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/** One refit of a least-squares fit to rates that were drawn anew. */
final class RateRefit implements Refit {

  private static final int POINTS = DerivedPoint.values().length;

  private final RateEquation equation;
  private final RateModel model;
  private final ArrheniusConstants constants;
  private final PointResiduals points;
  private final LevenbergMarquardt search;
  private final double[] optimum;
  private final RateDraw draw;
  private final FittedParameters errors;
  private final int freedom;

  private RateRefit(Workers shared) {
    var fitting = shared.fit.fitting();
    model = fitting.model();
    constants = fitting.constants();
    equation = shared.search.equation;
    points = shared.search.points.copy();
    search = shared.search.downhill();
    optimum = shared.optimum;
    draw = shared.draw;
    errors = shared.withErrors ? new FittedParameters(fitting, points) : null;
    freedom = shared.fit.degreesOfFreedom();
  }

  /** Makes a worker for each thread out of what they share. */
  static final class Workers implements Supplier<Refit> {
    private final RateFit fit;
    private final boolean withErrors;
    private final RateSearch search;
    private final double[] optimum;
    private final RateDraw draw;

    Workers(RateFit fit, Resampling resampling, boolean withErrors) {
      this.fit = fit;
      this.withErrors = withErrors;
      search = new RateSearch(fit.fitting(), fit.points());
      optimum = fit.found().coordinates();
      draw = drawOf(resampling);
    }

    private RateDraw drawOf(Resampling resampling) {
      return switch (resampling) {
        case RESIDUALS -> new ResidualDraw(fit, search.points, optimum);
        case PARAMETRIC -> new ParametricDraw(fit, search.points, optimum);
        case CABINETS -> new CabinetDraw(fit, search.points);
        case ANIMALS -> animals();
      };
    }

    private RateDraw animals() {
      if (!fit.data().hasAnimals()) {
        throw InputProblem.of("the rearing \"" + fit.data().subject() + "\" holds means alone")
            .expected("records of single animals")
            .because("animals are to be drawn within their cabinets")
            .mend("give the records, or draw residuals or means");
      }
      return new AnimalDraw(fit);
    }

    @Override
    public Refit get() {
      return new RateRefit(this);
    }
  }

  @Override
  public RefitOutcome refit(SplittableRandom random, double[] values) {
    draw.draw(random, points.rates);
    LeastSquaresSolution found = search.minimise(points, optimum);
    if (!found.isConverged()) {
      return RefitOutcome.FAILED;
    }
    double[] p = equation.toParameters(found.parameters(), constants);
    System.arraycopy(p, 0, values, 0, p.length);
    new CurvePoints(model.equation(), p, constants).into(model, values, p.length);
    if (errors != null) {
      double deviation = Math.sqrt(found.sumOfSquares() / freedom);
      double[] all = errors.standardErrors(p, errors.conditioning(p), deviation);
      System.arraycopy(all, 0, values, p.length + POINTS, all.length);
    }
    return found.isOnBoundary() ? RefitOutcome.ON_BOUNDARY : RefitOutcome.GOOD;
  }
}
