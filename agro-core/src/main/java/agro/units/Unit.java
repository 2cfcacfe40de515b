package agro.units;

/**
 * A unit of one kind of quantity: an enum constant such as {@link VolumeUnit#LITRE}, a {@link
 * LandUnit} with its place, or a {@link RatioUnit} put together from two units. A unit of another
 * kind does not compile.
 *
 * @param <Q> kind of the quantity that is counted in this unit
 */
public interface Unit<Q extends Quantity<Q>> {

  /**
   * What is measured in this unit.
   *
   * @return the kind
   */
  QuantityKind kind();

  /**
   * Symbol, name, code and size in one record.
   *
   * @return the definition
   */
  UnitDefinition definition();

  /**
   * The printed symbol. Where several units share a symbol it says which one is meant, and every
   * symbol is read back as this unit.
   *
   * @return for example {@code "mL"} or {@code "fl oz (US)"}
   */
  default String symbol() {
    return definition().symbol();
  }

  /**
   * The name in words, in the singular.
   *
   * @return for example {@code "millilitre"}
   */
  default String words() {
    return definition().words();
  }

  /**
   * The UCUM code in its case-sensitive form. Where UCUM has no code of its own, as for the
   * international acre, this is an expression of UCUM codes of exactly the same size.
   *
   * @return for example {@code "mL"} or {@code "43560.[sft_i]"}
   */
  default String ucum() {
    return definition().ucum();
  }

  /**
   * The size of this unit in the base unit of its kind.
   *
   * @return an exact ratio
   */
  default ExactFactor factor() {
    return definition().factor();
  }

  /**
   * Converts a number of this unit into the base unit.
   *
   * @param value number in this unit; NaN and infinities pass through
   * @return number in the base unit of the kind
   */
  default double toBase(double value) {
    return definition().factor().convert(value);
  }

  /**
   * Converts a number of the base unit into this unit.
   *
   * @param value number in the base unit of the kind; NaN and infinities pass through
   * @return number in this unit
   */
  default double fromBase(double value) {
    return definition().factor().convertBack(value);
  }
}
