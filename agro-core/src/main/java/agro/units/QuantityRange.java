package agro.units;

/**
 * A range of amounts, for example the 250 to 300 mL/ac of a label. It stays a range: there is no
 * mid-point here, because a dose half-way between two printed ones stands on no label.
 *
 * @param low lower end
 * @param high upper end, not below the lower one
 * @param <Q> kind of the amounts
 */
public record QuantityRange<Q extends Quantity<Q>>(Q low, Q high) {

  /** Refuses a range that runs downwards. */
  public QuantityRange {
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException(
          "a range runs from low to high, but got " + low + " to " + high);
    }
  }

  /**
   * A range of one amount.
   *
   * @param amount both ends
   * @param <Q> kind of the amount
   * @return the range from the amount to itself
   */
  public static <Q extends Quantity<Q>> QuantityRange<Q> exactly(Q amount) {
    return new QuantityRange<>(amount, amount);
  }

  /**
   * Whether both ends are the same.
   *
   * @return true for a single amount
   */
  public boolean isSingle() {
    return low.compareTo(high) == 0;
  }

  /**
   * The only amount of a range that holds one.
   *
   * @return the amount
   * @throws IllegalStateException if the ends differ
   */
  public Q single() {
    if (!isSingle()) {
      throw new IllegalStateException(
          "a single amount is asked of the range " + this + "; choose its low or its high end");
    }
    return low;
  }

  /**
   * Whether an amount lies in the range, ends included.
   *
   * @param amount the amount
   * @return true from low to high
   */
  public boolean contains(Q amount) {
    return low.compareTo(amount) <= 0 && amount.compareTo(high) <= 0;
  }

  /**
   * The range with another added end by end.
   *
   * @param other range to add
   * @return low plus low to high plus high
   */
  public QuantityRange<Q> plus(QuantityRange<Q> other) {
    return new QuantityRange<>(low.plus(other.low), high.plus(other.high));
  }

  /**
   * The range times a number.
   *
   * @param factor zero or more, so that the range does not turn round
   * @return the range of the products
   * @throws IllegalArgumentException if the factor is negative or not finite
   */
  public QuantityRange<Q> times(double factor) {
    if (!(factor >= 0)) {
      throw new IllegalArgumentException(
          "a range is multiplied by zero or more, but got " + factor);
    }
    return new QuantityRange<>(low.times(factor), high.times(factor));
  }

  /**
   * The range divided by a number.
   *
   * @param divisor more than zero
   * @return the range of the quotients
   * @throws IllegalArgumentException if the divisor is not above zero
   */
  public QuantityRange<Q> dividedBy(double divisor) {
    if (!(divisor > 0)) {
      throw new IllegalArgumentException(
          "a range is divided by more than zero, but got " + divisor);
    }
    return new QuantityRange<>(low.dividedBy(divisor), high.dividedBy(divisor));
  }

  /**
   * The smallest range that holds both.
   *
   * @param other the other range
   * @return the range from the lower low to the higher high
   */
  public QuantityRange<Q> hull(QuantityRange<Q> other) {
    return new QuantityRange<>(
        low.compareTo(other.low) <= 0 ? low : other.low,
        high.compareTo(other.high) >= 0 ? high : other.high);
  }

  /**
   * The range in print, in the base unit.
   *
   * @return for example {@code "250 to 300 L/ha"}, or one amount where both ends are the same
   */
  @Override
  public String toString() {
    return isSingle() ? low.toString() : Numbers.plain(low.inBaseUnit()) + " to " + high;
  }
}
