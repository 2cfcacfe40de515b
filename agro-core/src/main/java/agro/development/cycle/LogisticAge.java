package agro.development.cycle;

import agro.source.Bibliography;
import agro.source.Reference;
import agro.units.Numbers;

/**
 * Logistic emergence: F = 1 / (1 + e^(−(x − m) / s)), whose standard deviation is π s / √3.
 *
 * @param median m, in degree-days or physiological age
 * @param scale s, in the same unit, above 0
 */
public record LogisticAge(double median, double scale) implements AgeDistribution {

  /**
   * Checks the parameters.
   *
   * @throws agro.report.InputProblem when the scale is not above zero
   */
  public LogisticAge {
    DistributionInput.requireFinite(median, "median");
    DistributionInput.requirePositive(scale, "scale");
  }

  @Override
  public double completedBy(double age) {
    return 1 / (1 + Math.exp(-(age - median) / scale));
  }

  @Override
  public double ageAt(double share) {
    DistributionInput.requireShare(share);
    return median + scale * Math.log(share / (1 - share));
  }

  /**
   * Standard deviation of the ages.
   *
   * @return π s / √3
   */
  public double standardDeviation() {
    return Math.PI * scale / Math.sqrt(3);
  }

  @Override
  public String words() {
    return "logistic about " + Numbers.plain(median) + ", scale " + Numbers.plain(scale);
  }

  @Override
  public Reference source() {
    return Bibliography.EMERGENCE_CURVES;
  }
}
