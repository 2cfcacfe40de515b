package agro.units;

/**
 * A whole number of a unit as a unit of its own, for the "100 gal" below the line of a rate.
 *
 * @param count how many, 1 or more
 * @param unit the unit that is multiplied
 * @param definition symbol, name, code and size
 * @param <Q> kind of the quantity that is counted in this unit
 */
public record UnitMultiple<Q extends Quantity<Q>>(
    long count, Unit<Q> unit, UnitDefinition definition) implements Unit<Q> {

  /**
   * Multiplies a unit.
   *
   * @param count how many, 1 or more
   * @param unit the unit
   * @param <Q> kind of the quantity
   * @return for example 100 litres as a unit
   */
  public static <Q extends Quantity<Q>> UnitMultiple<Q> of(long count, Unit<Q> unit) {
    return new UnitMultiple<>(
        count,
        unit,
        new UnitDefinition(
            count + " " + unit.symbol(),
            count + " " + unit.words(),
            count + "." + RatioUnit.bracketed(unit.ucum()),
            ExactFactor.of(count, 1).times(unit.factor())));
  }

  @Override
  public QuantityKind kind() {
    return unit.kind();
  }

  @Override
  public String toString() {
    return definition.symbol();
  }
}
