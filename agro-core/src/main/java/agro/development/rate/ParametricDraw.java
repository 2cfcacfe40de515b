package agro.development.rate;

import agro.report.InputProblem;
import java.util.SplittableRandom;

/** Fitted rates with normal errors of the size of their standard errors; zero stays zero. */
final class ParametricDraw implements RateDraw {

  private final double[] fitted;
  private final double[] error;

  ParametricDraw(RateFit fit, PointResiduals points, double[] optimum) {
    int n = points.observations();
    fitted = new double[n];
    error = new double[n];
    for (int i = 0; i < n; i++) {
      var point = fit.points().get(i);
      boolean alive = point.rate() > 0;
      if (alive && Double.isNaN(point.standardError())) {
        throw InputProblem.of(
                "the mean at "
                    + agro.units.Numbers.plain(point.celsius())
                    + " °C has no number of animals or no spread")
            .expected("both for each mean")
            .because("means are to be drawn with their standard errors")
            .mend("give n and the standard deviation of the days, or draw residuals");
      }
      fitted[i] = alive ? points.fitted(i, optimum) : 0;
      error[i] = alive ? point.standardError() : 0;
    }
  }

  @Override
  public void draw(SplittableRandom random, double[] rates) {
    for (int i = 0; i < rates.length; i++) {
      rates[i] = fitted[i] + error[i] * random.nextGaussian();
    }
  }
}
