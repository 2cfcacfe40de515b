package agro.units;

/**
 * A finite amount of one kind: a length, a volume, a mass per area. It holds one double in the base
 * unit of its kind, which the name of the record component states. Quantities of different kinds
 * cannot be added, compared or assigned to one another; where a sum would be below zero although
 * the kind does not allow it, it is refused.
 *
 * @param <Q> the kind itself
 */
public interface Quantity<Q extends Quantity<Q>> extends Comparable<Q> {

  /** Differences below this share of the larger amount are rounding and count as zero. */
  double ROUNDING = 1e-12;

  /**
   * The number in the base unit.
   *
   * @return a finite number
   */
  double inBaseUnit();

  /**
   * The unit in which this kind is held.
   *
   * @return the base unit
   */
  Unit<Q> baseUnit();

  /**
   * Another amount of the same kind.
   *
   * @param value number in the base unit
   * @return the amount
   * @throws IllegalArgumentException if the kind does not allow the number
   */
  Q withBaseValue(double value);

  /**
   * The number in a stated unit, not rounded.
   *
   * @param unit a unit of this kind
   * @return the number in that unit
   */
  default double in(Unit<Q> unit) {
    return unit.fromBase(inBaseUnit());
  }

  /**
   * The sum.
   *
   * @param other amount to add
   * @return the sum
   * @throws IllegalArgumentException if the sum is not finite
   */
  default Q plus(Q other) {
    return withBaseValue(inBaseUnit() + sameThing(other));
  }

  /**
   * The difference. Amounts that differ by rounding alone leave exactly nothing.
   *
   * @param other amount to subtract
   * @return the difference
   * @throws IllegalArgumentException if the difference is below zero and the kind forbids it
   */
  default Q minus(Q other) {
    double subtracted = sameThing(other);
    double difference = inBaseUnit() - subtracted;
    double larger = Math.max(Math.abs(inBaseUnit()), Math.abs(subtracted));
    return withBaseValue(Math.abs(difference) <= ROUNDING * larger ? 0 : difference);
  }

  /**
   * The amount times a number.
   *
   * @param factor finite number
   * @return the product
   * @throws IllegalArgumentException if the kind does not allow the product
   */
  default Q times(double factor) {
    return withBaseValue(inBaseUnit() * factor);
  }

  /**
   * The amount divided by a number.
   *
   * @param divisor finite number other than 0
   * @return the quotient
   * @throws IllegalArgumentException if the kind does not allow the quotient
   */
  default Q dividedBy(double divisor) {
    return withBaseValue(inBaseUnit() / divisor);
  }

  /**
   * How many times the other amount this is.
   *
   * @param other amount to compare with
   * @return this divided by the other; not finite if the other is zero
   */
  default double ratioTo(Q other) {
    return inBaseUnit() / sameThing(other);
  }

  /**
   * The range that begins here.
   *
   * @param high upper end, not below this
   * @return the range from this to the other amount
   * @throws IllegalArgumentException if the other amount is lower
   */
  default QuantityRange<Q> to(Q high) {
    return new QuantityRange<>(withBaseValue(inBaseUnit()), high);
  }

  @Override
  default int compareTo(Q other) {
    return Double.compare(inBaseUnit(), sameThing(other));
  }

  private double sameThing(Q other) {
    if (baseUnit() != other.baseUnit() && !baseUnit().equals(other.baseUnit())) {
      throw new IllegalArgumentException(
          "an amount in "
              + baseUnit().symbol()
              + " and one in "
              + other.baseUnit().symbol()
              + " count different things and cannot be added or compared");
    }
    return other.inBaseUnit();
  }
}
