package agro.course.handwork;

import agro.course.sheet.ProbitLine;

/**
 * A line by hand beside the maximum-likelihood line of the same data.
 *
 * @param hand the line by hand
 * @param likelihood the maximum-likelihood line
 */
public record LikelihoodComparison(ProbitLine hand, ProbitLine likelihood) {

  static LikelihoodComparison of(HandProbitFit fit) {
    var other = fit.likelihoodFit();
    return new LikelihoodComparison(
        fit.line(), new ProbitLine(other.intercept() + ProbitLine.HALF, other.slope()));
  }

  /**
   * By how much the slope differs.
   *
   * @return hand less likelihood
   */
  public double slopeDifference() {
    return hand.slope() - likelihood.slope();
  }

  /**
   * By how much the logarithm of the median lethal dose differs.
   *
   * @return hand less likelihood
   */
  public double logDoseDifference() {
    return hand.logDoseFor(50) - likelihood.logDoseFor(50);
  }

  /**
   * By how much the median lethal dose differs.
   *
   * @return per cent of the dose by maximum likelihood
   */
  public double dosePercent() {
    return 100 * Math.expm1(Math.log(10) * logDoseDifference());
  }
}
