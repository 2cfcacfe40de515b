package agro.sampling.injury;

import agro.report.InputProblem;
import agro.stats.ConfidenceLimits;
import agro.stats.LinearFit;
import agro.units.MassPerArea;
import agro.units.MassPerAreaUnit;
import agro.units.Numbers;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.Objects;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Yield against pests or pest-days, as a straight line by least squares.
 *
 * @param line yield in t/ha on pests
 * @param measure what the pests are stated in
 */
public record YieldLoss(LinearFit line, PestMeasure measure) implements Presentable {

  /** Refuses null and lines without residuals. */
  public YieldLoss {
    Objects.requireNonNull(measure, "measure");
    if (line.points() < 3) {
      throw InputProblem.of("a line of yield through " + line.points() + " plots")
          .expected("at least three plots")
          .because("two plots give a line without any error")
          .mend("take more plots, over the whole range of pests");
    }
  }

  /**
   * Fits the line.
   *
   * @param pests pests or pest-days of each plot
   * @param tonnesPerHectare yield of each plot, as many
   * @param measure what the pests are stated in
   * @return the line
   * @throws InputProblem when there are fewer than three plots, or all have as many pests
   */
  public static YieldLoss fit(double[] pests, double[] tonnesPerHectare, PestMeasure measure) {
    try {
      return new YieldLoss(LinearFit.of(pests, tonnesPerHectare), measure);
    } catch (InputProblem problem) {
      throw problem;
    } catch (IllegalArgumentException noLine) {
      throw InputProblem.of(noLine.getMessage())
          .expected("a yield for each plot, and plots with different numbers of pests")
          .because("no loss can be told from plots that are alike")
          .mend("take plots over the whole range of pests, untreated and treated ones");
    }
  }

  /**
   * Yield lost for each pest, the slope with its sign turned.
   *
   * @return t/ha for each pest or pest-day; below zero when yield rises with pests
   */
  public double tonnesLostPerPest() {
    return -line.slope();
  }

  /**
   * Share of the yield without pests that each pest takes, −b / a.
   *
   * @return the share
   */
  public double shareLostPerPest() {
    return -line.slope() / line.intercept();
  }

  /**
   * Chance of so steep a line when pests do nothing, by Student's t on both sides.
   *
   * @return p
   */
  public double pValue() {
    double t = Math.abs(line.slope() / line.slopeStandardError());
    return 2 * new TDistribution(line.degreesOfFreedom()).cumulativeProbability(-t);
  }

  /**
   * Variance ratio of the line, F on 1 and n − 2 degrees of freedom.
   *
   * @return F
   */
  public double varianceRatio() {
    double t = line.slope() / line.slopeStandardError();
    return t * t;
  }

  /**
   * Covariance of intercept and slope.
   *
   * @return −x̄ s² / Sxx
   */
  public double covariance() {
    double error = line.slopeStandardError();
    return -line.meanX() * error * error;
  }

  /**
   * Limits of the yield lost for each pest.
   *
   * @param level level of the interval, such as 0.95
   * @return t/ha for each pest
   */
  public ConfidenceLimits lossLimits(double level) {
    double half = line.slopeHalfWidth(level);
    return new ConfidenceLimits(tonnesLostPerPest() - half, tonnesLostPerPest() + half);
  }

  /**
   * Limits of the mean yield at a number of pests.
   *
   * @param pests pests or pest-days
   * @param level level of the interval
   * @return t/ha
   */
  public ConfidenceLimits meanLimits(double pests, double level) {
    return about(pests, quantile(level) * line.meanStandardErrorAt(pests));
  }

  /**
   * Limits of the yield of one more plot at a number of pests.
   *
   * @param pests pests or pest-days
   * @param level level of the interval
   * @return t/ha
   */
  public ConfidenceLimits plotLimits(double pests, double level) {
    return about(
        pests,
        quantile(level) * Math.hypot(line.meanStandardErrorAt(pests), line.residualDeviation()));
  }

  private ConfidenceLimits about(double pests, double half) {
    return new ConfidenceLimits(line.at(pests) - half, line.at(pests) + half);
  }

  private double quantile(double level) {
    return new TDistribution(line.degreesOfFreedom())
        .inverseCumulativeProbability(0.5 + 0.5 * level);
  }

  /**
   * The loss as a term of the injury level.
   *
   * @param price value of the produce
   * @return the loss
   * @throws InputProblem when yield does not fall with pests
   */
  public CropLoss at(MoneyPerMass price) {
    if (!(tonnesLostPerPest() > 0)) {
      throw InputProblem.of("a yield that changes by " + line.slope() + " t/ha for each pest")
          .expected("a yield that falls with pests")
          .because("pests that cost nothing have no injury level")
          .mend("take more plots, or look for plots that differ in more than pests");
    }
    return CropLoss.produce(
        MassPerArea.of(tonnesLostPerPest(), MassPerAreaUnit.TONNE_PER_HECTARE), price);
  }

  @Override
  public Presentation presentation() {
    var limits = lossLimits(0.95);
    return Presentation.titled("Yield loss")
        .fact("Yield without pests", Numbers.significant(line.intercept(), 4) + " t/ha")
        .fact(
            "Loss for each of the " + measure.words(),
            Numbers.significant(tonnesLostPerPest(), 4) + " t/ha")
        .fact(
            "95 % interval of the loss",
            Numbers.significant(limits.low(), 4)
                + " to "
                + Numbers.significant(limits.high(), 4)
                + " t/ha")
        .fact("Share lost", Numbers.significant(100 * shareLostPerPest(), 4) + " %")
        .fact("Residual degrees of freedom", Integer.toString(line.degreesOfFreedom()))
        .fact("R²", Numbers.fixed(line.rSquared(), 4))
        .paragraph(
            limits.low() <= 0
                ? "The interval holds zero: these plots do not show that the pest costs yield."
                : "The line holds within the range of pests of these plots only.")
        .build();
  }
}
