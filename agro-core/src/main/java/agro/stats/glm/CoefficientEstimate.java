package agro.stats.glm;

import agro.stats.TestSentence;

/**
 * One coefficient or linear function of coefficients.
 *
 * @param name its name
 * @param estimate on the scale of the link; NaN unless the state is FINITE
 * @param standardError NaN unless the state is FINITE
 * @param statistic estimate over standard error; NaN unless the state is FINITE
 * @param degreesOfFreedom of Student's t; infinite where the statistic is a normal deviate
 * @param p two-sided; NaN unless the state is FINITE
 * @param state whether the data give it a finite value
 */
public record CoefficientEstimate(
    String name,
    double estimate,
    double standardError,
    double statistic,
    double degreesOfFreedom,
    double p,
    EstimateState state) {

  static CoefficientEstimate without(String name, EstimateState state) {
    return new CoefficientEstimate(
        name, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, state);
  }

  static CoefficientEstimate of(String name, double estimate, double error, double df) {
    double statistic = estimate / error;
    return new CoefficientEstimate(
        name, estimate, error, statistic, df, Tails.twoSided(statistic, df), EstimateState.FINITE);
  }

  /**
   * Whether there is a finite estimate.
   *
   * @return true if there is a finite estimate
   */
  public boolean isFinite() {
    return state == EstimateState.FINITE;
  }

  @Override
  public String toString() {
    if (!isFinite()) {
      return name + ": " + state.words();
    }
    return name
        + ": "
        + Figures.of(estimate)
        + " (standard error "
        + Figures.of(standardError)
        + "), "
        + (Double.isInfinite(degreesOfFreedom) ? "z" : "t")
        + " = "
        + Figures.of(statistic)
        + "; "
        + TestSentence.chance(p);
  }
}
