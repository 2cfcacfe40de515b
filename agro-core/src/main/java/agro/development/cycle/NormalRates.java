package agro.development.cycle;

import agro.source.Bibliography;
import agro.source.Reference;
import agro.units.Numbers;
import org.hipparchus.special.Erf;

/**
 * Rates of the members of a cohort are normal about their mean: F(x) = Φ((1 − 1/x) / c), with x =
 * time × mean rate and c the coefficient of variation of the rates.
 *
 * @param variation c, above 0
 */
public record NormalRates(double variation) implements AgeDistribution {

  /**
   * Checks the coefficient of variation.
   *
   * @throws agro.report.InputProblem when it is not above zero
   */
  public NormalRates {
    DistributionInput.requirePositive(variation, "coefficient of variation");
  }

  @Override
  public double completedBy(double age) {
    return age <= 0 ? 0 : NormalAge.standardNormal((1 - 1 / age) / variation);
  }

  /**
   * {@inheritDoc}
   *
   * <p>Infinite for the share of members whose rate would not be above zero.
   */
  @Override
  public double ageAt(double share) {
    DistributionInput.requireShare(share);
    double rate = 1 - variation * Math.sqrt(2) * Erf.erfInv(2 * share - 1);
    return rate > 0 ? 1 / rate : Double.POSITIVE_INFINITY;
  }

  @Override
  public String words() {
    return "normal rates with coefficient of variation " + Numbers.plain(variation);
  }

  @Override
  public Reference source() {
    return Bibliography.SHARPE_1981;
  }
}
