package agro.stats.linear;

import agro.stats.ConfidenceLimits;
import agro.stats.TestSentence;
import agro.stats.UpperTail;

/**
 * The estimate of a linear combination.
 *
 * @param name what it means
 * @param estimate its value
 * @param standardError its standard error
 * @param degreesOfFreedom degrees of freedom of the standard error, not always a whole number
 * @param sumOfSquares its sum of squares with one degree of freedom
 */
public record ContrastEstimate(
    String name,
    double estimate,
    double standardError,
    double degreesOfFreedom,
    double sumOfSquares) {

  /**
   * Estimate over standard error.
   *
   * @return Student's t
   */
  public double t() {
    return estimate / standardError;
  }

  /**
   * Chance of an estimate as far from zero or farther, to both sides, if there is no difference.
   *
   * @return 0 to 1
   */
  public double pValue() {
    return 2 * UpperTail.t(Math.abs(t()), degreesOfFreedom);
  }

  /**
   * Limits of the combination.
   *
   * @param level level of confidence, such as 0.95
   * @return limits from Student's distribution
   */
  public ConfidenceLimits limits(double level) {
    double reach = UpperTail.tExceededWith((1 - level) / 2, degreesOfFreedom) * standardError;
    return new ConfidenceLimits(estimate - reach, estimate + reach);
  }

  /**
   * The test as papers print it.
   *
   * @return for example "t = 2.10; df = 45; P = 0.041"
   */
  public String sentence() {
    return TestSentence.of("t", t(), pValue(), degreesOfFreedom);
  }

  @Override
  public String toString() {
    return name + ": " + estimate + " (standard error " + standardError + "); " + sentence();
  }
}
