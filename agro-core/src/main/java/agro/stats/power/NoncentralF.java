package agro.stats.power;

import agro.source.Reference;
import agro.stats.UpperTail;

/**
 * Noncentral F distribution: the ratio of two mean squares when treatments do differ.
 *
 * <p>P(F ≤ f) = Σ e^(-λ/2) (λ/2)^j / j! I_x(df1/2 + j, df2/2) with x = df1 f / (df1 f + df2). Both
 * tails are summed as such. Valid for λ up to 100,000.
 *
 * @param df1 degrees of freedom above the line, positive
 * @param df2 degrees of freedom below the line, positive
 * @param noncentrality λ, sum of n (mean - overall mean)² divided by the error variance
 */
public record NoncentralF(double df1, double df2, double noncentrality) {

  private static final double LARGEST = 1e5;

  /** Checks the parameters. */
  public NoncentralF {
    if (!(df1 > 0 && df2 > 0 && Double.isFinite(df1) && Double.isFinite(df2))) {
      throw new IllegalArgumentException(
          "degrees of freedom must be positive and finite, but are " + df1 + " and " + df2);
    }
    if (!(noncentrality >= 0 && noncentrality <= LARGEST)) {
      throw new IllegalArgumentException(
          "noncentrality must lie between 0 and 100000, but is " + noncentrality);
    }
  }

  /**
   * Chance of at most a value.
   *
   * @param f any number
   * @return 0 to 1, to 1e-12 absolute; NaN for NaN
   */
  public double below(double f) {
    if (Double.isNaN(f) || f <= 0) {
      return Double.isNaN(f) ? Double.NaN : 0;
    }
    return Math.min(1, mixture().below(share(f), complement(f), df1 / 2, df2 / 2));
  }

  /**
   * Chance of more than a value.
   *
   * @param f any number
   * @return 0 to 1, to 1e-12 absolute; NaN for NaN
   */
  public double above(double f) {
    if (Double.isNaN(f) || f <= 0) {
      return Double.isNaN(f) ? Double.NaN : 1;
    }
    if (noncentrality == 0) {
      return UpperTail.f(f, df1, df2);
    }
    return Math.min(1, mixture().above(share(f), complement(f), df1 / 2, df2 / 2));
  }

  /**
   * Chance that the test at a level finds a difference.
   *
   * @param alpha level of the test, between 0 and 1
   * @return the power
   */
  public double power(double alpha) {
    return above(UpperTail.fExceededWith(alpha, df1, df2));
  }

  private PoissonMixture mixture() {
    return new PoissonMixture(noncentrality / 2, 0);
  }

  private double share(double f) {
    return Double.isInfinite(f) ? 1 : df1 * f / (df1 * f + df2);
  }

  private double complement(double f) {
    return df2 / (df1 * f + df2);
  }

  /**
   * The work that the distribution is published in.
   *
   * @return Johnson, Kotz and Balakrishnan 1995
   */
  public static Reference source() {
    return PowerSources.JOHNSON_KOTZ_1995;
  }
}
