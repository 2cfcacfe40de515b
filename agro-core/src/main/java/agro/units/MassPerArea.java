package agro.units;

/**
 * A mass per area, whatever substance and whatever area it is.
 *
 * @param kilogramsPerHectare mass per area in kg/ha, finite and zero or more
 */
public record MassPerArea(double kilogramsPerHectare) implements Quantity<MassPerArea> {

  /** Refuses numbers that no mass per area has. */
  public MassPerArea {
    kilogramsPerHectare = QuantityKind.MASS_PER_AREA.zeroOrMore(kilogramsPerHectare);
  }

  /**
   * A mass per area in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the mass per area
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static MassPerArea of(double value, Unit<MassPerArea> unit) {
    return new MassPerArea(QuantityKind.MASS_PER_AREA.baseOf(value, unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param numerator unit above the line
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<MassPerArea> unit(Unit<Mass> numerator, Unit<Area> denominator) {
    return RatioUnit.of(QuantityKind.MASS_PER_AREA, numerator, denominator);
  }

  /**
   * A mass per area as people write it, for example {@code "2 lb/ac"}.
   *
   * @param text one number with its unit
   * @return the mass per area
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static MassPerArea parse(String text) {
    return new MassPerArea(
        TypedReading.single(QuantityText.parse(text), QuantityKind.MASS_PER_AREA));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<MassPerArea> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<MassPerArea> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.MASS_PER_AREA);
    double high = TypedReading.high(parsed, QuantityKind.MASS_PER_AREA);
    return new QuantityRange<>(new MassPerArea(low), new MassPerArea(high));
  }

  /**
   * A mass per area in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "kg/har"}
   * @return the mass per area
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     mass per area
   */
  public static MassPerArea ofUcum(double value, String code) {
    var factor =
        UcumReader.factor(code, QuantityKind.MASS_PER_AREA, MassPerAreaUnit.KILOGRAM_PER_HECTARE);
    return new MassPerArea(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return kilogramsPerHectare;
  }

  @Override
  public Unit<MassPerArea> baseUnit() {
    return MassPerAreaUnit.KILOGRAM_PER_HECTARE;
  }

  @Override
  public MassPerArea withBaseValue(double value) {
    return new MassPerArea(value);
  }

  /**
   * The mass for an area.
   *
   * @param area the area
   * @return the mass
   */
  public Mass times(Area area) {
    return new Mass(kilogramsPerHectare * area.squareMetres() / 10_000);
  }

  /**
   * The mass per area of what this mass per area contains.
   *
   * @param content mass per mass
   * @return the mass per area of the content
   */
  public MassPerArea times(MassPerMass content) {
    return new MassPerArea(kilogramsPerHectare * content.gramsPerKilogram() / 1000);
  }

  @Override
  public String toString() {
    return QuantityKind.print(kilogramsPerHectare, baseUnit());
  }
}
