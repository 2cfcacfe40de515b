package agro.development.cycle;

import agro.source.Bibliography;
import agro.source.Reference;
import agro.units.Numbers;

/**
 * Weibull distribution on normalised age: F = 1 − exp(−((a − g) / e)^b) for a &gt; g, else 0. One
 * curve stands for all temperatures (the assumption of the same shape).
 *
 * @param earliest g, physiological age before which nothing completes
 * @param scale e, above 0
 * @param shape b, above 0
 */
public record WeibullAge(double earliest, double scale, double shape) implements AgeDistribution {

  /**
   * Checks the parameters.
   *
   * @throws agro.report.InputProblem when scale or shape is not above zero
   */
  public WeibullAge {
    DistributionInput.requireFinite(earliest, "earliest age");
    DistributionInput.requirePositive(scale, "scale");
    DistributionInput.requirePositive(shape, "shape");
  }

  /**
   * The curve whose median is age 1: e = (1 − g) / (ln 2)^(1/b).
   *
   * @param earliest g, below 1
   * @param shape b, above 0
   * @return the curve
   * @throws agro.report.InputProblem when g is not below 1 or b is not above zero
   */
  public static WeibullAge withMedianOne(double earliest, double shape) {
    DistributionInput.requirePositive(shape, "shape");
    return new WeibullAge(earliest, (1 - earliest) / Math.pow(Math.log(2), 1 / shape), shape);
  }

  @Override
  public double completedBy(double age) {
    return age <= earliest ? 0 : -Math.expm1(-Math.pow((age - earliest) / scale, shape));
  }

  @Override
  public double ageAt(double share) {
    DistributionInput.requireShare(share);
    return earliest + scale * Math.pow(-Math.log1p(-share), 1 / shape);
  }

  @Override
  public String words() {
    return "Weibull distribution on normalised age, from "
        + Numbers.plain(earliest)
        + ", scale "
        + Numbers.plain(scale)
        + ", shape "
        + Numbers.plain(shape);
  }

  @Override
  public Reference source() {
    return Bibliography.WAGNER_1984;
  }
}
