package agro.stats.glm;

import java.util.SplittableRandom;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/** Residuals through the distribution function. */
final class QuantileResiduals {

  private QuantileResiduals() {}

  static double[] of(
      ScoringProblem problem,
      FitMeasures measures,
      double dispersion,
      ErrorFamily family,
      long seed) {
    var random = new SplittableRandom(seed);
    double[] residuals = new double[problem.rows];
    for (int i = 0; i < residuals.length; i++) {
      double share = random.nextDouble();
      double eta = measures.eta()[i];
      if (Double.isInfinite(eta)) {
        residuals[i] = LinkFunction.PROBIT.eta(share);
        continue;
      }
      double y = problem.y[i];
      double shape = family == ErrorFamily.GAMMA ? 1 / dispersion : problem.shape;
      double upper = below(family, y, problem.total[i], measures.mean(i), shape);
      double lower =
          family == ErrorFamily.GAMMA
              ? upper
              : below(family, y - 1, problem.total[i], measures.mean(i), shape);
      double p = lower + share * (upper - lower);
      residuals[i] = LinkFunction.PROBIT.eta(Math.min(1 - 1e-16, Math.max(1e-300, p)));
    }
    return residuals;
  }

  /** Probability of at most y. */
  private static double below(
      ErrorFamily family, double y, double total, double mean, double shape) {
    if (y < 0) {
      return 0;
    }
    return switch (family) {
      case BINOMIAL, QUASI_BINOMIAL ->
          y >= total ? 1 : Beta.regularizedBeta(1 - mean, total - y, y + 1);
      case POISSON, QUASI_POISSON -> Gamma.regularizedGammaQ(y + 1, mean);
      case NEGATIVE_BINOMIAL ->
          Double.isInfinite(shape)
              ? Gamma.regularizedGammaQ(y + 1, mean)
              : Beta.regularizedBeta(shape / (shape + mean), shape, y + 1);
      case GAMMA -> Gamma.regularizedGammaP(shape, shape * y / mean);
    };
  }
}
