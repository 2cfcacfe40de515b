package agro.dose;

import agro.units.Numbers;
import agro.units.Quantity;
import agro.units.Unit;
import java.util.Objects;

/**
 * What stands below the line of a rate, as the label writes it: 100 L, 1 acre, 100 kg.
 *
 * @param number finite number above zero
 * @param unit the unit that is written
 * @param <Q> kind of the quantity
 */
public record WrittenAmount<Q extends Quantity<Q>>(double number, Unit<Q> unit) {

  /** Refuses numbers by which nothing can be divided. */
  public WrittenAmount {
    Objects.requireNonNull(unit, "unit");
    if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "an amount below the line of a rate is above zero and finite, but got " + number);
    }
  }

  /**
   * One of a unit.
   *
   * @param unit the unit
   * @param <Q> kind of the quantity
   * @return the amount
   */
  public static <Q extends Quantity<Q>> WrittenAmount<Q> one(Unit<Q> unit) {
    return new WrittenAmount<>(1, unit);
  }

  /**
   * The number in the base unit of the kind.
   *
   * @return a number above zero
   */
  public double inBaseUnit() {
    return unit.toBase(number);
  }

  /**
   * The amount as it stands below the line of a rate.
   *
   * @return for example {@code "ha"} or {@code "100 L"}
   */
  @Override
  public String toString() {
    return number == 1 ? unit.symbol() : Numbers.plain(number) + " " + unit.symbol();
  }
}
