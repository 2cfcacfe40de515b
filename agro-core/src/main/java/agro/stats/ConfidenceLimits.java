package agro.stats;

/**
 * Two limits of an estimate.
 *
 * @param low lower limit, possibly minus infinity; NaN when not known
 * @param high upper limit, possibly infinity; NaN when not known
 */
public record ConfidenceLimits(double low, double high) {

  /**
   * Whether a value lies between the limits, which belong to the interval.
   *
   * @param value any number
   * @return false for NaN
   */
  public boolean covers(double value) {
    return value >= low && value <= high;
  }

  /**
   * Distance between the limits.
   *
   * @return NaN when a limit is not known
   */
  public double width() {
    return high - low;
  }
}
