package agro.units;

/**
 * A mass per length of row.
 *
 * @param gramsPerMetre mass per length in g/m, finite and zero or more
 */
public record MassPerLength(double gramsPerMetre) implements Quantity<MassPerLength> {

  /** Refuses numbers that no mass per length has. */
  public MassPerLength {
    gramsPerMetre = QuantityKind.MASS_PER_LENGTH.zeroOrMore(gramsPerMetre);
  }

  /**
   * A mass per length in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the mass per length
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static MassPerLength of(double value, Unit<MassPerLength> unit) {
    return new MassPerLength(QuantityKind.MASS_PER_LENGTH.baseOf(value, unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param numerator unit above the line
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<MassPerLength> unit(Unit<Mass> numerator, Unit<Length> denominator) {
    return RatioUnit.of(QuantityKind.MASS_PER_LENGTH, numerator, denominator);
  }

  /**
   * A mass per length as people write it, for example {@code "0.75 g/m"}.
   *
   * @param text one number with its unit
   * @return the mass per length
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static MassPerLength parse(String text) {
    return new MassPerLength(
        TypedReading.single(QuantityText.parse(text), QuantityKind.MASS_PER_LENGTH));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<MassPerLength> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<MassPerLength> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.MASS_PER_LENGTH);
    double high = TypedReading.high(parsed, QuantityKind.MASS_PER_LENGTH);
    return new QuantityRange<>(new MassPerLength(low), new MassPerLength(high));
  }

  /**
   * A mass per length in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "g/m"}
   * @return the mass per length
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     mass per length
   */
  public static MassPerLength ofUcum(double value, String code) {
    var factor =
        UcumReader.factor(code, QuantityKind.MASS_PER_LENGTH, MassPerLengthUnit.GRAM_PER_METRE);
    return new MassPerLength(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return gramsPerMetre;
  }

  @Override
  public Unit<MassPerLength> baseUnit() {
    return MassPerLengthUnit.GRAM_PER_METRE;
  }

  @Override
  public MassPerLength withBaseValue(double value) {
    return new MassPerLength(value);
  }

  /**
   * The mass for a length.
   *
   * @param length the length
   * @return the mass
   */
  public Mass times(Length length) {
    return new Mass(gramsPerMetre * length.metres() / 1000);
  }

  @Override
  public String toString() {
    return QuantityKind.print(gramsPerMetre, baseUnit());
  }
}
