package agro.units;

import java.util.Objects;

/**
 * How quantities are printed for a reader: in which family of units, per which unit of land, and
 * with how many digits. Print is for reading; calculations go on with the unrounded quantity.
 *
 * @param system family of units
 * @param land unit of land for areas and for rates per area, for example {@link AreaUnit#ACRE} or
 *     {@link LandUnit#BIGHA_WEST_BENGAL}
 * @param digits significant digits at most, 2 to 15
 */
public record QuantityStyle(MeasurementSystem system, Unit<Area> land, int digits) {

  /** Litres, kilograms and hectares, four digits. */
  public static final QuantityStyle METRIC =
      new QuantityStyle(MeasurementSystem.METRIC, AreaUnit.HECTARE, 4);

  /** US units and acres, four digits. */
  public static final QuantityStyle US = new QuantityStyle(MeasurementSystem.US, AreaUnit.ACRE, 4);

  /** Imperial units and acres, four digits. */
  public static final QuantityStyle IMPERIAL =
      new QuantityStyle(MeasurementSystem.IMPERIAL, AreaUnit.ACRE, 4);

  /** Refuses nulls and numbers of digits that hide or pretend too much. */
  public QuantityStyle {
    Objects.requireNonNull(system, "system");
    Objects.requireNonNull(land, "land");
    if (digits < 2 || digits > 15) {
      throw new IllegalArgumentException(
          "a quantity is printed with 2 to 15 significant digits, but got " + digits);
    }
  }

  /**
   * The same style for another unit of land.
   *
   * @param unit the unit of land
   * @return the style
   */
  public QuantityStyle per(Unit<Area> unit) {
    return new QuantityStyle(system, unit, digits);
  }

  /**
   * The same style with another number of digits.
   *
   * @param count significant digits at most, 2 to 15
   * @return the style
   */
  public QuantityStyle withDigits(int count) {
    return new QuantityStyle(system, land, count);
  }

  /**
   * A quantity in print.
   *
   * @param quantity the quantity
   * @param <Q> its kind
   * @return number and unit, for example {@code "10.26 fl oz (US)/ac"}
   */
  public <Q extends Quantity<Q>> String print(Q quantity) {
    var unit = unitFor(quantity);
    return Numbers.significant(quantity.in(unit), digits) + " " + unit.symbol();
  }

  /**
   * A range in print, both ends in the unit that suits the upper one.
   *
   * @param range the range
   * @param <Q> kind of its ends
   * @return for example {@code "250 to 300 mL/ac"}, or one amount where both ends are the same
   */
  public <Q extends Quantity<Q>> String printRange(QuantityRange<Q> range) {
    if (range.isSingle()) {
      return print(range.high());
    }
    var unit = unitFor(range.high());
    return Numbers.significant(range.low().in(unit), digits)
        + " to "
        + Numbers.significant(range.high().in(unit), digits)
        + " "
        + unit.symbol();
  }

  /**
   * The unit in which a quantity is printed: the largest usual one that gives a number of at least
   * one, or the smallest.
   *
   * @param quantity the quantity
   * @param <Q> its kind
   * @return the unit
   */
  public <Q extends Quantity<Q>> Unit<Q> unitFor(Q quantity) {
    var units = StyleUnits.largestFirst(this, quantity);
    for (int i = 0; i < units.size() - 1; i++) {
      if (Math.abs(quantity.in(units.get(i))) >= StyleUnits.LEAST) {
        return units.get(i);
      }
    }
    return units.get(units.size() - 1);
  }

  @Override
  public String toString() {
    return system + " per " + land.symbol() + ", " + digits + " digits";
  }
}
