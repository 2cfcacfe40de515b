package agro.dose;

import agro.units.Mass;
import agro.units.MassUnit;
import agro.units.QuantityRange;
import agro.units.QuantityStyle;
import agro.units.Unit;
import java.util.Objects;

/**
 * A mass, or a range of masses, of active ingredient; never of product, which is a {@link
 * ProductAmount}.
 *
 * @param range low and high mass
 * @param unit unit in which it is written
 * @param basis whether active ingredient, acid equivalent or salt is weighed
 */
public record ActiveAmount(QuantityRange<Mass> range, Unit<Mass> unit, ActiveBasis basis) {

  /** Refuses nulls. */
  public ActiveAmount {
    Objects.requireNonNull(range, "range");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(basis, "basis");
  }

  /**
   * A mass of active ingredient.
   *
   * @param number number in the unit
   * @param unit unit in which it is written
   * @return the amount
   */
  public static ActiveAmount of(double number, Unit<Mass> unit) {
    return new ActiveAmount(
        QuantityRange.exactly(Mass.of(number, unit)), unit, ActiveBasis.ACTIVE_INGREDIENT);
  }

  /**
   * A range of masses, printed in grams.
   *
   * @param range low and high mass
   * @param basis what is weighed
   * @return the amount
   */
  public static ActiveAmount of(QuantityRange<Mass> range, ActiveBasis basis) {
    return new ActiveAmount(range, MassUnit.GRAM, basis);
  }

  /**
   * The same mass stated as something else; nothing is converted.
   *
   * @param other what is weighed
   * @return the amount
   */
  public ActiveAmount as(ActiveBasis other) {
    return new ActiveAmount(range, unit, other);
  }

  /**
   * The low end alone.
   *
   * @return a single amount
   */
  public ActiveAmount low() {
    return new ActiveAmount(QuantityRange.exactly(range.low()), unit, basis);
  }

  /**
   * The high end alone.
   *
   * @return a single amount
   */
  public ActiveAmount high() {
    return new ActiveAmount(QuantityRange.exactly(range.high()), unit, basis);
  }

  /**
   * The amount times a number.
   *
   * @param factor zero or more
   * @return low and high times the number
   * @throws IllegalArgumentException if the number is negative or not finite
   */
  public ActiveAmount times(double factor) {
    return new ActiveAmount(range.times(factor), unit, basis);
  }

  /**
   * Whether low and high are the same.
   *
   * @return true for a single amount
   */
  public boolean isSingle() {
    return range.isSingle();
  }

  /**
   * The amount in a reader's units.
   *
   * @param style family of units and digits
   * @return for example {@code "100 g ai"}
   */
  public String print(QuantityStyle style) {
    return style.printRange(range) + " " + basis.symbol();
  }

  @Override
  public String toString() {
    return AmountPrint.range(range, unit) + " " + basis.symbol();
  }
}
