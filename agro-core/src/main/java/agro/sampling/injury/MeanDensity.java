package agro.sampling.injury;

import agro.report.InputProblem;
import agro.sampling.SamplingUnit;
import agro.units.Numbers;
import java.util.Objects;

/**
 * A mean density with the standard error of its sample.
 *
 * @param unit what the mean belongs to
 * @param mean 0 or more
 * @param standardError 0 or more
 */
public record MeanDensity(SamplingUnit unit, double mean, double standardError) {

  /** Checks the numbers. */
  public MeanDensity {
    Objects.requireNonNull(unit, "unit");
    if (!(mean >= 0 && standardError >= 0 && Double.isFinite(mean + standardError))) {
      throw InputProblem.of("a mean of " + mean + " with a standard error of " + standardError)
          .expected("finite numbers of 0 or more")
          .because("a density and its error are never below zero")
          .mend("look at the counts that it comes from");
    }
  }

  /**
   * This density in another sampling unit, by a stated number alone.
   *
   * @param conversion how many of this unit make one of the other
   * @return mean and error for the other unit
   * @throws InputProblem when the conversion starts from another unit
   */
  public MeanDensity in(UnitConversion conversion) {
    unit.requireSame(conversion.from(), "a mean and its conversion");
    return new MeanDensity(
        conversion.to(), mean * conversion.number(), standardError * conversion.number());
  }

  /**
   * The density as an uncertain number.
   *
   * @return a gamma distribution with this mean and error, or the mean alone when it has no error
   */
  public UncertainNumber uncertain() {
    return mean > 0 && standardError > 0
        ? new UncertainNumber.Gamma(mean, standardError)
        : new UncertainNumber.Exact(mean);
  }

  @Override
  public String toString() {
    return Numbers.significant(mean, 4)
        + " ± "
        + Numbers.significant(standardError, 3)
        + " per "
        + unit.words();
  }
}
