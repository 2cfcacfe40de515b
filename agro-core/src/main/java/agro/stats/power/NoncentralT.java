package agro.stats.power;

import agro.source.Reference;
import agro.stats.NormalTail;
import agro.stats.UpperTail;

/**
 * Noncentral t distribution: a difference divided by its estimated standard error when the true
 * difference is not zero.
 *
 * <p>For t ≥ 0 P(T ≤ t) = Φ(-δ) + ½ Σ [p_j I_x(j + ½, df/2) + q_j I_x(j + 1, df/2)] with x = t² /
 * (t² + df), p_j = e^(-δ²/2) (δ²/2)^j / j! and q_j = sign(δ) e^(-δ²/2) (δ²/2)^(j + ½) / Γ(j + 3/2);
 * negative t by symmetry. Valid for δ up to 400 in size.
 *
 * @param df degrees of freedom, positive
 * @param noncentrality δ, true difference divided by its true standard error
 */
public record NoncentralT(double df, double noncentrality) {

  private static final double LARGEST = 400;

  /** Checks the parameters. */
  public NoncentralT {
    if (!(df > 0)) {
      throw new IllegalArgumentException("degrees of freedom must be positive, but are " + df);
    }
    if (!(Math.abs(noncentrality) <= LARGEST)) {
      throw new IllegalArgumentException(
          "noncentrality must lie between -400 and 400, but is " + noncentrality);
    }
  }

  /**
   * Chance of at most a value.
   *
   * @param t any number
   * @return 0 to 1, to 1e-12 absolute; NaN for NaN
   */
  public double below(double t) {
    return new NoncentralT(df, -noncentrality).above(-t);
  }

  /**
   * Chance of more than a value.
   *
   * @param t any number
   * @return 0 to 1, to 1e-12 absolute; NaN for NaN
   */
  public double above(double t) {
    if (Double.isNaN(t)) {
      return Double.NaN;
    }
    if (Double.isInfinite(df)) {
      return NormalTail.above(t - noncentrality);
    }
    if (noncentrality == 0) {
      return UpperTail.t(t, df);
    }
    if (t < 0) {
      return limited(NormalTail.above(-noncentrality) + halfSum(t, -noncentrality, false));
    }
    return limited(
        noncentrality > 0
            ? halfSum(t, noncentrality, true)
            : NormalTail.above(-noncentrality) - halfSum(t, noncentrality, false));
  }

  /**
   * Half the sum over j of both kinds of weights times I_x, or times 1 - I_x for the complement.
   * The sum of all p_j is 1 and that of all q_j is 2 Φ(δ) - 1.
   */
  private double halfSum(double t, double delta, boolean complement) {
    double square = t * t;
    double x = Double.isInfinite(square) ? 1 : square / (square + df);
    double rest = df / (square + df);
    var even = new PoissonMixture(delta * delta / 2, 0);
    var odd = new PoissonMixture(delta * delta / 2, 0.5);
    double evenSum =
        complement ? even.above(x, rest, 0.5, df / 2) : even.below(x, rest, 0.5, df / 2);
    double oddSum = complement ? odd.above(x, rest, 1, df / 2) : odd.below(x, rest, 1, df / 2);
    return 0.5 * (evenSum + Math.signum(delta) * oddSum);
  }

  private static double limited(double chance) {
    // Sums of parts may leave 0 to 1 by rounding in the sixteenth digit.
    return Math.max(0, Math.min(1, chance));
  }

  /**
   * Chance that a two-sided test at a level finds a difference, in either direction.
   *
   * @param alpha level of the test, between 0 and 1
   * @return the power
   */
  public double twoSidedPower(double alpha) {
    double critical = UpperTail.tExceededWith(alpha / 2, df);
    return limited(above(critical) + below(-critical));
  }

  /**
   * Chance that a one-sided test at a level finds a difference above zero.
   *
   * @param alpha level of the test, between 0 and 1
   * @return the power
   */
  public double oneSidedPower(double alpha) {
    return above(UpperTail.tExceededWith(alpha, df));
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
