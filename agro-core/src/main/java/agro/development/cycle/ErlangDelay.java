package agro.development.cycle;

import agro.source.Bibliography;
import agro.source.Reference;
import agro.units.Numbers;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.special.Gamma;

/**
 * Delay through k substages of equal mean length: with x = age over the mean delay, F = 1 − Σ (i =
 * 0 to k − 1) e^(−kx) (kx)^i / i!. The variance of the delay is its squared mean over k, so k =
 * mean² / variance. For a k that is no whole number this is the gamma distribution of the same mean
 * and variance.
 *
 * <p>The ages here are physiological: degree-days or days are divided by the mean delay. Under
 * changing temperature the chain of substages is solved exactly in physiological age, for every
 * substage runs on the same clock; stepping it in time by Euler's rule would spread it by the
 * length of the step.
 *
 * @param substages k, above 0
 */
public record ErlangDelay(double substages) implements AgeDistribution {

  private static final int NEWTON_STEPS = 3;

  /**
   * Checks the number of substages.
   *
   * @throws agro.report.InputProblem when it is not above zero
   */
  public ErlangDelay {
    DistributionInput.requirePositive(substages, "number of substages");
  }

  /**
   * The delay of a stage with known mean and standard deviation.
   *
   * @param mean mean duration, in days or degree-days
   * @param standardDeviation its standard deviation, in the same unit
   * @return the delay with k = mean² / variance
   * @throws agro.report.InputProblem when one is not above zero
   */
  public static ErlangDelay of(double mean, double standardDeviation) {
    DistributionInput.requirePositive(mean, "mean duration");
    DistributionInput.requirePositive(standardDeviation, "standard deviation");
    return new ErlangDelay(mean * mean / (standardDeviation * standardDeviation));
  }

  @Override
  public double completedBy(double age) {
    return age <= 0 ? 0 : Gamma.regularizedGammaP(substages, substages * age);
  }

  @Override
  public double ageAt(double share) {
    DistributionInput.requireShare(share);
    var gamma = new GammaDistribution(substages, 1 / substages);
    double age = gamma.inverseCumulativeProbability(share);
    // The library's solver stops at an absolute error, which is coarse where the first come early.
    for (int i = 0; i < NEWTON_STEPS; i++) {
      double next = age - (completedBy(age) - share) / gamma.density(age);
      age = next > 0 && Double.isFinite(next) ? next : age;
    }
    return age;
  }

  /**
   * Density of ages at completion.
   *
   * @param age physiological age
   * @return the derivative of {@link #completedBy}, 0 before age 0
   */
  public double density(double age) {
    return age <= 0 ? 0 : new GammaDistribution(substages, 1 / substages).density(age);
  }

  /**
   * Share that survives the delay when a constant share is lost per day at a constant temperature:
   * (1 + μ D / k)^(−k), with mean delay D.
   *
   * @param lossPerDay μ, share lost per day, 0 or more
   * @param meanDays D, mean delay in days
   * @return 0 to 1
   */
  public double survival(double lossPerDay, double meanDays) {
    DistributionInput.requirePositive(meanDays, "mean delay");
    return Math.exp(-substages * Math.log1p(lossPerDay * meanDays / substages));
  }

  @Override
  public String words() {
    return "Erlang delay of " + Numbers.plain(substages) + " substages";
  }

  @Override
  public Reference source() {
    return Bibliography.MANETSCH_1976;
  }
}
