package agro.stats.glm;

import agro.stats.TestSentence;

/**
 * What one term takes off the deviance.
 *
 * @param term name of the term
 * @param degreesOfFreedom coefficients that the term adds
 * @param deviance fall of the deviance
 * @param residualDeviance deviance that is left
 * @param errorDegreesOfFreedom of F; infinite for a chi-squared test
 * @param statistic chi-squared, or F where the dispersion is estimated; NaN where the term adds no
 *     coefficients
 * @param p chance of as large a statistic without the term; NaN where the term adds no coefficients
 */
public record DevianceRow(
    String term,
    int degreesOfFreedom,
    double deviance,
    double residualDeviance,
    double errorDegreesOfFreedom,
    double statistic,
    double p) {

  static DevianceRow of(
      String term, int df, double fall, double left, double dispersion, double error) {
    if (df == 0) {
      return new DevianceRow(term, 0, 0, left, error, Double.NaN, Double.NaN);
    }
    double drop = Math.max(0, fall);
    boolean known = Double.isInfinite(error);
    double statistic = known ? drop : drop / df / dispersion;
    double p = known ? Tails.chiSquared(drop, df) : Tails.f(statistic, df, error);
    return new DevianceRow(term, df, drop, left, error, statistic, p);
  }

  /**
   * Whether the statistic is an F.
   *
   * @return true if the statistic is an F
   */
  public boolean isF() {
    return !Double.isInfinite(errorDegreesOfFreedom);
  }

  /**
   * The test in one sentence, such as {@code F = 41.22; df = 5, 66; P < 0.001}.
   *
   * @return the test in one sentence, such as {@code F = 41.22; df = 5, 66; P < 0.001}
   */
  public String sentence() {
    if (degreesOfFreedom == 0) {
      return "no test: the term adds nothing to the others";
    }
    return isF()
        ? TestSentence.of("F", statistic, p, degreesOfFreedom, errorDegreesOfFreedom)
        : TestSentence.of("chi-squared", statistic, p, degreesOfFreedom);
  }

  @Override
  public String toString() {
    return term + ": deviance " + Figures.of(deviance) + "; " + sentence();
  }
}
