package agro.generation;

import agro.units.ThermalTime;
import java.util.Objects;

/**
 * The interval that explains all seasons at once with its 90 % profile likelihood interval. It says
 * what held within these seasons and understates the uncertainty for a new one.
 *
 * @param estimate the estimate
 * @param low lower limit, not below the search range
 * @param high upper limit, not above the search range
 * @param atBoundary whether the estimate lies on the edge of the search range, which means that the
 *     range, not the data, set it
 * @param widenedBy factor by which the profile interval was widened because counts of running
 *     visits stray together; 1 where they do not
 */
public record PooledInterval(
    ThermalTime estimate, ThermalTime low, ThermalTime high, boolean atBoundary, double widenedBy) {

  /** Correlation of running residuals above which an interval is widened. */
  public static final double CORRELATED = 0.3;

  /** Refuses nulls. */
  public PooledInterval {
    Objects.requireNonNull(estimate, "estimate");
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
  }

  /**
   * An interval that was not widened.
   *
   * @param estimate the estimate
   * @param low lower limit
   * @param high upper limit
   * @param atBoundary whether the estimate lies on the edge of the search range
   */
  public PooledInterval(
      ThermalTime estimate, ThermalTime low, ThermalTime high, boolean atBoundary) {
    this(estimate, low, high, atBoundary, 1);
  }

  /**
   * Widens an interval for counts that stray together: a series with lag-one correlation r is worth
   * {@code (1 - r) / (1 + r)} of as many independent visits, so both limits move out from the
   * estimate by the root of {@code (1 + r) / (1 - r)}. At a correlation of 0.3 or less nothing is
   * changed.
   *
   * @param correlation correlation of the residuals of running visits
   * @param range limits are not moved beyond it
   * @return the interval to show
   */
  PooledInterval widened(double correlation, IntervalRange range) {
    if (!(correlation > CORRELATED)) {
      return this;
    }
    var r = Math.min(correlation, 0.95);
    var factor = Math.sqrt((1 + r) / (1 - r));
    var k = estimate.degreeDaysC();
    return new PooledInterval(
        estimate,
        new ThermalTime(Math.max(range.low().degreeDaysC(), k - factor * (k - low.degreeDaysC()))),
        new ThermalTime(
            Math.min(range.high().degreeDaysC(), k + factor * (high.degreeDaysC() - k))),
        atBoundary,
        factor);
  }
}
