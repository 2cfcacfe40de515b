package agro.development.rate;

import agro.stats.Conditioning;
import agro.stats.FoundMinimum;
import java.util.Arrays;
import java.util.List;

/**
 * Standard errors of a fit by likelihood: from the expected curvature, with each record as one
 * observation of the logarithm of the rate, scaled to the curvature of the whole likelihood.
 */
final class LikelihoodErrors {

  private static final double STEP = 1e-4;

  private final RateFitting fitting;
  private final List<RearedAnimals> animals;

  LikelihoodErrors(RateFitting fitting, List<RearedAnimals> animals) {
    this.fitting = fitting;
    this.animals = animals;
  }

  double[] standardErrors(double[] p, FoundMinimum best) {
    double[] q = best.parameters();
    int k = q.length - 1;
    double dispersion = Math.exp(q[k]);
    double[] coordinates = Arrays.copyOf(q, k);
    var points =
        animals.stream()
            .mapToDouble(RearedAnimals::celsius)
            .distinct()
            .boxed()
            .map(celsius -> point(celsius, coordinates, dispersion))
            .filter(point -> point.weight() > 0)
            .toList();
    var residuals = new PointResiduals(fitting.equation(), fitting.constants(), points);
    var parameters = new FittedParameters(fitting, residuals);
    Conditioning conditioning = parameters.conditioning(p);
    return parameters.standardErrors(p, conditioning, 1);
  }

  /** A temperature as one rate, with the curvature of its log likelihood as weight. */
  private RatePoint point(double celsius, double[] q, double dispersion) {
    double rate = fitting.equation().fitted(celsius, q, fitting.constants());
    double h = STEP * rate;
    double up = logLikelihood(celsius, rate + h, dispersion);
    double middle = logLikelihood(celsius, rate, dispersion);
    double down = logLikelihood(celsius, rate - h, dispersion);
    double curvature = rate > 0 ? -(up - 2 * middle + down) / (h * h) : 0;
    return new RatePoint("", celsius, rate, Double.NaN, Math.max(0, curvature));
  }

  private double logLikelihood(double celsius, double rate, double dispersion) {
    double sum = 0;
    for (var one : animals) {
      if (one.celsius() == celsius) {
        sum +=
            one.animals()
                * fitting
                    .distribution()
                    .orElseThrow()
                    .logProbability(one.fromDays(), one.toDays(), rate, dispersion);
      }
    }
    return sum;
  }
}
