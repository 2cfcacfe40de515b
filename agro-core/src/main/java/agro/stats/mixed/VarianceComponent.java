package agro.stats.mixed;

import agro.stats.ConfidenceLimits;
import agro.stats.UpperTail;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * An estimated variance.
 *
 * @param name random term, or "residual"
 * @param levels number of levels of the term; of observations for the residuals
 * @param estimate the variance, zero where the likelihood falls from zero on
 * @param standardError standard error from the information; nothing at zero
 */
public record VarianceComponent(
    String name, int levels, double estimate, OptionalDouble standardError) {

  /**
   * Whether the estimate lies on its bound: the data show no such variance, which does not prove
   * that there is none.
   *
   * @return true for an estimate of zero
   */
  public boolean isAtZero() {
    return estimate == 0;
  }

  /**
   * The standard deviation.
   *
   * @return root of the variance
   */
  public double standardDeviation() {
    return Math.sqrt(estimate);
  }

  /**
   * Limits from a chi-squared distribution with the degrees of freedom that the standard error
   * implies (Satterthwaite). Exact for the residual of a balanced design, rough for few levels.
   *
   * @param level level of confidence, such as 0.95
   * @return the limits; not known at zero, where no standard error exists
   */
  public ConfidenceLimits limits(double level) {
    if (standardError.isEmpty()) {
      return new ConfidenceLimits(Double.NaN, Double.NaN);
    }
    double ratio = estimate / standardError.getAsDouble();
    double df = 2 * ratio * ratio;
    double tail = (1 - level) / 2;
    return new ConfidenceLimits(
        df * estimate / UpperTail.chiSquaredExceededWith(tail, df),
        df * estimate / UpperTail.chiSquaredExceededWith(1 - tail, df));
  }

  @Override
  public String toString() {
    return isAtZero()
        ? name + ": 0 (at the bound; no standard error)"
        : String.format(
            Locale.ROOT,
            "%s: %.5g (standard error %.3g)",
            name,
            estimate,
            standardError.orElse(Double.NaN));
  }
}
