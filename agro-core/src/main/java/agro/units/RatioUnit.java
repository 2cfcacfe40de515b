package agro.units;

/**
 * A unit put together from two, for example millilitre per bigha of West Bengal. Each kind of ratio
 * has a method {@code unit} that makes one, so that only matching units can be combined.
 *
 * @param kind what is measured
 * @param numerator unit above the line
 * @param denominator unit below the line
 * @param definition symbol, name, code and size
 * @param <Q> kind of the quantity that is counted in this unit
 */
public record RatioUnit<Q extends Quantity<Q>>(
    QuantityKind kind, Unit<?> numerator, Unit<?> denominator, UnitDefinition definition)
    implements Unit<Q> {

  static <Q extends Quantity<Q>> RatioUnit<Q> of(
      QuantityKind kind, Unit<?> numerator, Unit<?> denominator) {
    return new RatioUnit<>(kind, numerator, denominator, define(kind, numerator, denominator));
  }

  static UnitDefinition define(QuantityKind kind, Unit<?> numerator, Unit<?> denominator) {
    return new UnitDefinition(
        numerator.symbol() + "/" + denominator.symbol(),
        numerator.words() + " per " + denominator.words(),
        numerator.ucum() + "/" + bracketed(denominator.ucum()),
        numerator.factor().times(kind.perRatio()).times(denominator.factor().inverse()));
  }

  static String bracketed(String code) {
    return code.indexOf('.') < 0 && code.indexOf('/') < 0 ? code : "(" + code + ")";
  }

  @Override
  public String toString() {
    return definition.symbol();
  }
}
