package agro.course.handwork;

import agro.course.sheet.ProbitLine;
import agro.trial.bioassay.DoseLimits;
import agro.trial.bioassay.LimitShape;

/**
 * The dose that kills a share, by hand.
 *
 * @param percent the share in per cent
 * @param logDose m, logarithm of the dose
 * @param dose the dose
 * @param variance variance of m, with the factor of heterogeneity as far as it applies
 * @param g Fieller's g
 * @param logLimits fiducial limits of m
 * @param limits fiducial limits of the dose
 */
public record HandLethalDose(
    double percent,
    double logDose,
    double dose,
    double variance,
    double g,
    DoseLimits logLimits,
    DoseLimits limits) {

  static HandLethalDose of(HandProbitFit fit, double percent) {
    var sums = fit.last().sums();
    var rounding = fit.question().rounding();
    double slope = fit.line().slope();
    double place = rounding.result(fit.line().logDoseFor(percent));
    double factor = fit.heterogeneityFactor();
    double off = place - sums.meanX();
    double variance = factor / (slope * slope) * (1 / sums.w() + off * off / sums.sxx());
    var logLimits = limits(fit, place, off);
    return new HandLethalDose(
        percent,
        place,
        Math.pow(10, place),
        variance,
        fit.g(),
        logLimits,
        new DoseLimits(
            logLimits.shape(), Math.pow(10, logLimits.low()), Math.pow(10, logLimits.high())));
  }

  /**
   * Fieller: m + g / (1 − g) (m − x̄) ± t / (b (1 − g)) √((1 − g) / Σnw + (m − x̄)² / Sxx), with
   * the factor of heterogeneity under the root. For g above 1 the same two numbers bound what is
   * refuted instead, if they exist.
   */
  private static DoseLimits limits(HandProbitFit fit, double place, double off) {
    var sums = fit.last().sums();
    double rest = 1 - fit.g();
    double under = rest / sums.w() + off * off / sums.sxx();
    if (rest == 0 || under < 0) {
      return new DoseLimits(
          LimitShape.EVERYWHERE, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    double middle = place + fit.g() / rest * off;
    double half =
        Math.abs(
            fit.deviate()
                / (fit.line().slope() * rest)
                * Math.sqrt(fit.heterogeneityFactor() * under));
    return new DoseLimits(
        rest > 0 ? LimitShape.BOUNDED : LimitShape.OUTSIDE, middle - half, middle + half);
  }

  /**
   * Standard error of the logarithm of the dose.
   *
   * @return square root of the variance
   */
  public double standardError() {
    return Math.sqrt(variance);
  }

  /**
   * Expected probit of the share.
   *
   * @return 5 for one half
   */
  public double probit() {
    return ProbitLine.probit(percent);
  }
}
