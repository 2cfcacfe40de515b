package agro.units;

/**
 * One number or a range of numbers, without a unit.
 *
 * @param low lower end, finite
 * @param high upper end, finite and not below the lower one
 */
public record NumberRange(double low, double high) {

  /** Refuses a range that is not finite or runs downwards. */
  public NumberRange {
    if (!(Double.isFinite(low) && Double.isFinite(high) && low <= high)) {
      throw new IllegalArgumentException(
          "a range runs from low to high, both finite, but got " + low + " to " + high);
    }
  }

  /**
   * Whether both ends are the same.
   *
   * @return true for a single number
   */
  public boolean isSingle() {
    return low == high;
  }

  @Override
  public String toString() {
    return isSingle() ? Numbers.plain(low) : Numbers.plain(low) + " to " + Numbers.plain(high);
  }
}
