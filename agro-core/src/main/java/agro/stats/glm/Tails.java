package agro.stats.glm;

import agro.stats.NormalTail;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/** Tail probabilities and their quantiles, kept precise far out. */
final class Tails {

  private Tails() {}

  /** Two-sided p of a normal deviate or, with finite degrees of freedom, of Student's t. */
  static double twoSided(double statistic, double df) {
    if (!(df > 0) || Double.isNaN(statistic)) {
      return Double.NaN;
    }
    double size = Math.abs(statistic);
    return Double.isInfinite(df)
        ? 2 * NormalTail.above(size)
        : Beta.regularizedBeta(df / (df + size * size), df / 2, 0.5);
  }

  /** Upper tail of chi-squared. */
  static double chiSquared(double statistic, double df) {
    return statistic <= 0 ? 1 : Gamma.regularizedGammaQ(df / 2, statistic / 2);
  }

  /** Upper tail of F. */
  static double f(double statistic, double df1, double df2) {
    return statistic <= 0
        ? 1
        : Beta.regularizedBeta(df2 / (df2 + df1 * statistic), df2 / 2, df1 / 2);
  }

  /** Deviate that is exceeded in size with probability 1 - level. */
  static double quantile(double level, double df) {
    double upper = 0.5 * (1 - level);
    return Double.isInfinite(df)
        ? -LinkFunction.PROBIT.eta(upper)
        : -new TDistribution(df).inverseCumulativeProbability(upper);
  }
}
