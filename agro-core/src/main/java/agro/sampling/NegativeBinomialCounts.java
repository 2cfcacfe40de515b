package agro.sampling;

import agro.report.InputProblem;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/**
 * Counts by the negative binomial with mean m and exponent k: P(x) = Γ(k + x) / (x! Γ(k)) · (m / (m
 * + k))^x · (1 + m / k)^(−k), variance m + m² / k. An infinite k is the Poisson distribution.
 *
 * @param mean m, above 0
 * @param k exponent, above 0; positive infinity for counts at random
 */
public record NegativeBinomialCounts(double mean, double k) {

  /**
   * Checks the parameters.
   *
   * @throws InputProblem when the mean is not above zero and finite, or k is not above zero
   */
  public NegativeBinomialCounts {
    if (!(mean > 0 && Double.isFinite(mean) && k > 0)) {
      throw InputProblem.of("a negative binomial with mean " + mean + " and exponent k " + k)
          .expected("a finite mean above 0 and a k above 0")
          .because("counts have no such distribution")
          .mend("give the mean count for each unit and the k of the pest, such as 1.2");
    }
  }

  /**
   * Counts at random, the limit of a large k.
   *
   * @param mean m, above 0
   * @return the Poisson distribution
   * @throws InputProblem when the mean is not above zero and finite
   */
  public static NegativeBinomialCounts poisson(double mean) {
    return new NegativeBinomialCounts(mean, Double.POSITIVE_INFINITY);
  }

  /**
   * Variance of the counts.
   *
   * @return m + m² / k
   */
  public double variance() {
    return mean + mean * mean / k;
  }

  /**
   * Logarithm of the probability of a count.
   *
   * @param count x, 0 or more
   * @return ln P(x)
   */
  public double logProbability(int count) {
    if (Double.isInfinite(k)) {
      return count * Math.log(mean) - mean - Gamma.logGamma(count + 1.0);
    }
    return Gamma.logGamma(k + count)
        - Gamma.logGamma(k)
        - Gamma.logGamma(count + 1.0)
        - count * Math.log1p(k / mean)
        - k * Math.log1p(mean / k);
  }

  /**
   * Probability of a count.
   *
   * @param count x, 0 or more
   * @return P(x)
   */
  public double probability(int count) {
    return count < 0 ? 0 : Math.exp(logProbability(count));
  }

  /**
   * Probability of more than so many.
   *
   * @param count x, 0 or more
   * @return P(X &gt; x)
   */
  public double chanceOfMoreThan(int count) {
    if (count < 0) {
      return 1;
    }
    if (Double.isInfinite(k)) {
      return Gamma.regularizedGammaP(count + 1.0, mean);
    }
    return Beta.regularizedBeta(mean / (mean + k), count + 1.0, k);
  }
}
