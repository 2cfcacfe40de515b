package agro.development.cycle;

import agro.source.Bibliography;
import agro.source.Reference;
import agro.units.Numbers;
import org.hipparchus.special.Erf;

/**
 * Normal emergence: F = Φ((x − m) / s).
 *
 * @param mean m, in degree-days or physiological age
 * @param standardDeviation s, in the same unit, above 0
 */
public record NormalAge(double mean, double standardDeviation) implements AgeDistribution {

  /**
   * Checks the parameters.
   *
   * @throws agro.report.InputProblem when the standard deviation is not above zero
   */
  public NormalAge {
    DistributionInput.requireFinite(mean, "mean");
    DistributionInput.requirePositive(standardDeviation, "standard deviation");
  }

  /** Φ(z), without loss of digits in either tail. */
  static double standardNormal(double z) {
    return 0.5 * Erf.erfc(-z / Math.sqrt(2));
  }

  @Override
  public double completedBy(double age) {
    return standardNormal((age - mean) / standardDeviation);
  }

  @Override
  public double ageAt(double share) {
    DistributionInput.requireShare(share);
    return mean + standardDeviation * Math.sqrt(2) * Erf.erfInv(2 * share - 1);
  }

  @Override
  public String words() {
    return "normal about "
        + Numbers.plain(mean)
        + ", standard deviation "
        + Numbers.plain(standardDeviation);
  }

  @Override
  public Reference source() {
    return Bibliography.EMERGENCE_CURVES;
  }
}
