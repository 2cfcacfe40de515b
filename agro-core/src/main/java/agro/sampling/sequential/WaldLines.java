package agro.sampling.sequential;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Working;
import java.util.Objects;

/**
 * Wald's sequential probability ratio test of a low mean m0 against a high mean m1. With A = (1 −
 * β) / α, B = β / (1 − α): the field is low when the total is at or below ln B / d + s n, high when
 * it is at or above ln A / d + s n.
 *
 * @param family distribution of the counts
 * @param lowMean m0, at which the field should be called low
 * @param highMean m1, at which it should be called high, above m0
 * @param alpha chance of calling a field at m0 high
 * @param beta chance of calling a field at m1 low
 */
public record WaldLines(
    CountFamily family, double lowMean, double highMean, double alpha, double beta)
    implements StopBounds {

  /**
   * Checks means and chances.
   *
   * @throws InputProblem when the means are not in order or not possible in the family, a chance is
   *     not between 0 and 1, or their sum is not below 1
   */
  public WaldLines {
    Objects.requireNonNull(family, "family");
    if (!(family.allows(lowMean) && family.allows(highMean) && highMean > lowMean)) {
      throw InputProblem.of("a low mean of " + lowMean + " and a high mean of " + highMean)
          .expected("a low mean below the high mean, both possible for " + family.words())
          .because("the test decides between the two")
          .mend("put them on both sides of the threshold, for example at 0.75 and 1.25 times it");
    }
    if (!(alpha > 0 && beta > 0 && alpha + beta < 1)) {
      throw InputProblem.of("chances of error of " + alpha + " and " + beta)
          .expected("two chances above 0 whose sum is below 1")
          .because("the lines would cross or lie at infinity")
          .mend("take for example 0.1 and 0.1");
    }
  }

  /**
   * Lines for a family and two means.
   *
   * @param family distribution of the counts
   * @param lowMean m0
   * @param highMean m1, above m0
   * @param alpha chance of calling a field at m0 high
   * @param beta chance of calling a field at m1 low
   * @return the lines
   * @throws InputProblem when the means are not in order or not possible, or the chances are not
   */
  public static WaldLines of(
      CountFamily family, double lowMean, double highMean, double alpha, double beta) {
    return new WaldLines(family, lowMean, highMean, alpha, beta);
  }

  /**
   * d, the weight of one animal.
   *
   * @return above 0
   */
  public double weight() {
    return family.weight(lowMean, highMean);
  }

  /**
   * s, the slope of both lines.
   *
   * @return animals for each unit
   */
  public double slope() {
    return family.slope(lowMean, highMean);
  }

  private double logUpper() {
    return Math.log((1 - beta) / alpha);
  }

  private double logLower() {
    return Math.log(beta / (1 - alpha));
  }

  /**
   * Where the low line meets zero units.
   *
   * @return ln B / d, below 0
   */
  public double lowIntercept() {
    return logLower() / weight();
  }

  /**
   * Where the high line meets zero units.
   *
   * @return ln A / d, above 0
   */
  public double highIntercept() {
    return logUpper() / weight();
  }

  @Override
  public double low(int units) {
    return lowIntercept() + slope() * units;
  }

  @Override
  public double high(int units) {
    return highIntercept() + slope() * units;
  }

  @Override
  public double middle() {
    return slope();
  }

  /**
   * Wald's approximation at a value of h, which leaves out by how much a total overshoots a line.
   * The exact values are those of {@link PlanCharacteristics}.
   *
   * @param h parameter: 1 at the low mean, −1 at the high mean
   * @return mean, chance of calling the field low, mean number of units
   */
  public WaldApproximation approximation(double h) {
    double mean = family.meanAt(lowMean, highMean, h);
    double upper = logUpper();
    double lower = logLower();
    boolean still = Math.abs(h) < 1e-9;
    double low =
        still
            ? upper / (upper - lower)
            : Math.expm1(h * upper) / (Math.exp(h * upper) - Math.exp(h * lower));
    double units =
        still
            ? -lowIntercept() * highIntercept() / family.variance(mean)
            : (low * lowIntercept() + (1 - low) * highIntercept()) / (mean - slope());
    return new WaldApproximation(h, mean, low, units);
  }

  /**
   * Wald's approximation at a mean.
   *
   * @param mean mean count for each unit
   * @return chance of calling the field low, mean number of units
   * @throws InputProblem when the mean is not possible in the family
   */
  public WaldApproximation approximationAt(double mean) {
    if (!family.allows(mean)) {
      throw InputProblem.of("a mean of " + mean)
          .expected("a mean that is possible for " + family.words())
          .because("the plan has no properties there")
          .mend("ask for a mean near the two of the test");
    }
    double low = -1;
    double high = 1;
    while (family.meanAt(lowMean, highMean, low) < mean) {
      low *= 2;
    }
    while (family.meanAt(lowMean, highMean, high) > mean) {
      high *= 2;
    }
    for (int i = 0; i < 200 && high - low > 1e-15 * Math.max(1, Math.abs(low)); i++) {
      double half = 0.5 * (low + high);
      if (family.meanAt(lowMean, highMean, half) > mean) {
        low = half;
      } else {
        high = half;
      }
    }
    return approximation(0.5 * (low + high));
  }

  /**
   * The lines as on a blackboard.
   *
   * @return weight, slope and intercepts with the numbers put in
   */
  public Working working() {
    return Working.of("Stop lines by Wald's test")
        .step(
            "weight of one animal, d",
            "logarithm of the ratio of likelihoods, for each animal",
            family.words(),
            Numbers.fixed(weight(), 6))
        .step("slope of both lines, s", "", "", Numbers.fixed(slope(), 6))
        .step(
            "intercept of the low line",
            "ln(β / (1 − α)) / d",
            "ln("
                + Numbers.plain(beta)
                + " / "
                + Numbers.plain(1 - alpha)
                + ") / "
                + Numbers.fixed(weight(), 6),
            Numbers.fixed(lowIntercept(), 4))
        .step(
            "intercept of the high line",
            "ln((1 − β) / α) / d",
            "ln("
                + Numbers.plain(1 - beta)
                + " / "
                + Numbers.plain(alpha)
                + ") / "
                + Numbers.fixed(weight(), 6),
            Numbers.fixed(highIntercept(), 4),
            source());
  }

  @Override
  public String words() {
    return "Wald's test of a mean of "
        + Numbers.significant(lowMean, 4)
        + " against "
        + Numbers.significant(highMean, 4)
        + ", chances of error "
        + Numbers.plain(alpha)
        + " and "
        + Numbers.plain(beta)
        + ", "
        + family.words();
  }

  @Override
  public Reference source() {
    return SamplingBibliography.WALD_1947;
  }
}
