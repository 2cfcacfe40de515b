package agro.sampling.dispersion;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.sampling.NegativeBinomialCounts;
import agro.units.Numbers;
import org.hipparchus.special.Gamma;

/**
 * Pearson's chi-squared test of counts against a distribution, the largest counts put together.
 *
 * @param chiSquared Σ (observed − expected)² / expected
 * @param degreesOfFreedom classes − 1 − fitted parameters
 * @param pooledFrom first count of the last class
 */
public record GoodnessOfFit(double chiSquared, int degreesOfFreedom, int pooledFrom) {

  static GoodnessOfFit of(
      CountSample sample, NegativeBinomialCounts counts, int pooledFrom, int parameters) {
    int freedom = pooledFrom - parameters;
    if (freedom < 1) {
      throw InputProblem.of((pooledFrom + 1) + " classes of counts for a test of fit")
          .expected("at least " + (parameters + 2) + " classes")
          .because(parameters + " fitted figures leave no degree of freedom")
          .mend("count more units, so that more counts are expected often enough");
    }
    double sum = 0;
    int below = 0;
    for (int x = 0; x < pooledFrom; x++) {
      double expected = sample.size() * counts.probability(x);
      int observed = sample.unitsWith(x);
      below += observed;
      sum += (observed - expected) * (observed - expected) / expected;
    }
    double expected = sample.size() * counts.chanceOfMoreThan(pooledFrom - 1);
    double observed = sample.size() - below;
    sum += (observed - expected) * (observed - expected) / expected;
    return new GoodnessOfFit(sum, freedom, pooledFrom);
  }

  /**
   * Chance of a chi-squared as large or larger when the distribution is right.
   *
   * @return 0 to 1
   */
  public double chanceOfLarger() {
    return Gamma.regularizedGammaQ(0.5 * degreesOfFreedom, 0.5 * chiSquared);
  }

  /**
   * The test in words.
   *
   * @return χ², degrees of freedom, P and the pooling
   */
  public String words() {
    double p = chanceOfLarger();
    return "χ² = "
        + Numbers.fixed(chiSquared, 2)
        + "; df = "
        + degreesOfFreedom
        + "; "
        + (p < 0.001 ? "P < 0.001" : "P = " + Numbers.fixed(p, 3))
        + " (counts of "
        + pooledFrom
        + " and more together)";
  }
}
