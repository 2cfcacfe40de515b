package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * The standard uncertainty of a mean as a share of the mean, with its degrees of freedom. For
 * products and quotients the shares of the factors combine as the root of the sum of their squares,
 * and the degrees of freedom after Welch and Satterthwaite (JCGM 100:2008, sections 5.1.6 and G.4,
 * from memory).
 *
 * @param standard standard uncertainty ÷ mean, finite, 0 or more
 * @param degreesOfFreedom degrees of freedom, above 0; infinite if the uncertainty is known
 */
public record RelativeUncertainty(double standard, double degreesOfFreedom) {

  /** Refuses what is no uncertainty. */
  public RelativeUncertainty {
    if (!(standard >= 0 && standard < Double.POSITIVE_INFINITY) || !(degreesOfFreedom > 0)) {
      throw InputProblem.of(
              "a relative uncertainty of "
                  + standard
                  + " with "
                  + degreesOfFreedom
                  + " degrees of freedom")
          .expected("a finite share, 0 or more, with degrees of freedom above 0")
          .because("the interval is the share times a quantile of Student's t")
          .mend("divide the standard error by the mean; n readings have n - 1 degrees of freedom");
    }
  }

  /**
   * The uncertainty of a product or quotient of this quantity and another one, measured
   * independently.
   *
   * @param other the uncertainty of the other factor
   * @return the combined uncertainty
   */
  public RelativeUncertainty combinedWith(RelativeUncertainty other) {
    double variance = standard * standard + other.standard * other.standard;
    if (variance == 0) {
      return new RelativeUncertainty(0, degreesOfFreedom + other.degreesOfFreedom);
    }
    double spent =
        squared(standard * standard / variance) / degreesOfFreedom
            + squared(other.standard * other.standard / variance) / other.degreesOfFreedom;
    return new RelativeUncertainty(Math.sqrt(variance), 1 / spent);
  }

  /**
   * Combines all.
   *
   * @param parts uncertainties of factors measured independently, at least one
   * @return the combined uncertainty
   */
  public static RelativeUncertainty combined(List<RelativeUncertainty> parts) {
    var all = parts.get(0);
    for (var part : parts.subList(1, parts.size())) {
      all = all.combinedWith(part);
    }
    return all;
  }

  /**
   * Half the width of the two-sided t interval, as a share of the mean.
   *
   * @param confidence level between 0 and 1, for example 0.95
   * @return t quantile × standard uncertainty
   * @throws InputProblem if the level is not between 0 and 1
   */
  public double halfWidth(double confidence) {
    return standard == 0 ? 0 : factor(confidence) * standard;
  }

  /**
   * The quantile of Student's t by which the standard uncertainty is multiplied.
   *
   * @param confidence two-sided level between 0 and 1
   * @return the factor, for example 2.776 at 0.95 and 4 degrees of freedom
   * @throws InputProblem if the level is not between 0 and 1
   */
  public double factor(double confidence) {
    double tail = 0.5 * (1 + SprayerChecks.confidence(confidence));
    double degrees = Math.min(degreesOfFreedom, 1e9);
    return new TDistribution(degrees).inverseCumulativeProbability(tail);
  }

  private static double squared(double value) {
    return value * value;
  }

  @Override
  public String toString() {
    return Numbers.significant(100 * standard, 3)
        + " % with "
        + Numbers.significant(degreesOfFreedom, 3)
        + (degreesOfFreedom == 1 ? " degree of freedom" : " degrees of freedom");
  }
}
