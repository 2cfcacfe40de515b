package agro.generation;

import java.util.Objects;

/**
 * One lower threshold of a profile.
 *
 * @param outcome interval and dates at the threshold
 * @param drop how far the log likelihood, all else fitted anew, lies below its highest, 0 or more
 * @param intervalErrorC standard error of the interval given the threshold, within these seasons,
 *     in °C·d
 */
public record ThresholdPoint(ThresholdOutcome outcome, double drop, double intervalErrorC) {

  /** Half of the 0.90 quantile of chi-squared with 2 degrees of freedom, {@code -log(0.1)}. */
  static final double PAIR_DROP = -Math.log(0.1);

  /** Refuses null. */
  public ThresholdPoint {
    Objects.requireNonNull(outcome, "outcome");
  }

  /**
   * The threshold.
   *
   * @return °C
   */
  public double lowerC() {
    return outcome.lower().celsius();
  }

  /**
   * The interval that fits best at this threshold.
   *
   * @return °C·d
   */
  public double intervalC() {
    return outcome.pooled().degreeDaysC();
  }

  /**
   * Whether the threshold lies in the 90 % region of the pair.
   *
   * @return true when some interval at this threshold does
   */
  public boolean inRegion() {
    return drop <= PAIR_DROP;
  }

  /**
   * Half the width of the region at this threshold, by the curvature of the likelihood.
   *
   * @return °C·d; 0 outside the region
   */
  public double halfWidthC() {
    return inRegion() ? intervalErrorC * Math.sqrt(2 * (PAIR_DROP - drop)) : 0;
  }
}
