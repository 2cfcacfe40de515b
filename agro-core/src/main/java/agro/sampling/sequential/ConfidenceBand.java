package agro.sampling.sequential;

import agro.report.InputProblem;
import agro.sampling.VarianceModel;
import agro.source.Reference;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import java.util.Objects;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Iwao's band about a critical mean m: T = n m ± z √(n s²(m)). A field whose total lies outside the
 * band differs from the critical mean at the stated level; sampling ends at n = z² s²(m) / h², when
 * the mean is known to ± h.
 *
 * @param model how the variance follows from the mean
 * @param criticalMean m, above 0
 * @param level two-sided level of the band, such as 0.9
 */
public record ConfidenceBand(VarianceModel model, double criticalMean, double level)
    implements StopBounds {

  /**
   * Checks mean and level.
   *
   * @throws InputProblem when the mean is not above zero or the level not between 0 and 1
   */
  public ConfidenceBand {
    Objects.requireNonNull(model, "model");
    if (!(criticalMean > 0 && Double.isFinite(criticalMean) && level > 0 && level < 1)) {
      throw InputProblem.of("a critical mean of " + criticalMean + " at level " + level)
          .expected("a mean above 0 and a level between 0 and 1")
          .because("the band lies about the mean at which treating begins to pay")
          .mend("take the threshold as the critical mean, and for example 0.9");
    }
  }

  private double quantile() {
    return new NormalDistribution().inverseCumulativeProbability(0.5 + 0.5 * level);
  }

  private double half(int units) {
    return quantile() * Math.sqrt(units * model.variance(criticalMean));
  }

  @Override
  public double low(int units) {
    return units * criticalMean - half(units);
  }

  @Override
  public double high(int units) {
    return units * criticalMean + half(units);
  }

  @Override
  public double middle() {
    return criticalMean;
  }

  /**
   * Units after which sampling ends because the mean is known well enough.
   *
   * @param halfWidth h, half width of the interval in animals for each unit, above 0
   * @return z² s²(m) / h², before rounding
   * @throws InputProblem when the half width is not above zero
   */
  public double mostUnits(double halfWidth) {
    if (!(halfWidth > 0)) {
      throw InputProblem.of("a half width of " + halfWidth)
          .expected("a number above 0")
          .because("sampling would never end")
          .mend("say how close to the critical mean a field may be without a decision");
    }
    double z = quantile();
    return z * z * model.variance(criticalMean) / (halfWidth * halfWidth);
  }

  @Override
  public String words() {
    return "band about a mean of "
        + Numbers.plain(criticalMean)
        + " at level "
        + Numbers.plain(level)
        + ", "
        + model.words();
  }

  @Override
  public Reference source() {
    return SamplingBibliography.IWAO_1975;
  }
}
