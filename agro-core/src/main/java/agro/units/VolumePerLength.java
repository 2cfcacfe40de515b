package agro.units;

/**
 * A volume per length of row.
 *
 * @param millilitresPerMetre volume per length in mL/m, finite and zero or more
 */
public record VolumePerLength(double millilitresPerMetre) implements Quantity<VolumePerLength> {

  /** Refuses numbers that no volume per length has. */
  public VolumePerLength {
    millilitresPerMetre = QuantityKind.VOLUME_PER_LENGTH.zeroOrMore(millilitresPerMetre);
  }

  /**
   * A volume per length in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the volume per length
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static VolumePerLength of(double value, Unit<VolumePerLength> unit) {
    return new VolumePerLength(QuantityKind.VOLUME_PER_LENGTH.baseOf(value, unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param numerator unit above the line
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<VolumePerLength> unit(Unit<Volume> numerator, Unit<Length> denominator) {
    return RatioUnit.of(QuantityKind.VOLUME_PER_LENGTH, numerator, denominator);
  }

  /**
   * A volume per length as people write it, for example {@code "20 mL/m"}.
   *
   * @param text one number with its unit
   * @return the volume per length
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static VolumePerLength parse(String text) {
    return new VolumePerLength(
        TypedReading.single(QuantityText.parse(text), QuantityKind.VOLUME_PER_LENGTH));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<VolumePerLength> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<VolumePerLength> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.VOLUME_PER_LENGTH);
    double high = TypedReading.high(parsed, QuantityKind.VOLUME_PER_LENGTH);
    return new QuantityRange<>(new VolumePerLength(low), new VolumePerLength(high));
  }

  /**
   * A volume per length in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "mL/m"}
   * @return the volume per length
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     volume per length
   */
  public static VolumePerLength ofUcum(double value, String code) {
    var factor =
        UcumReader.factor(
            code, QuantityKind.VOLUME_PER_LENGTH, VolumePerLengthUnit.MILLILITRE_PER_METRE);
    return new VolumePerLength(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return millilitresPerMetre;
  }

  @Override
  public Unit<VolumePerLength> baseUnit() {
    return VolumePerLengthUnit.MILLILITRE_PER_METRE;
  }

  @Override
  public VolumePerLength withBaseValue(double value) {
    return new VolumePerLength(value);
  }

  /**
   * The volume for a length.
   *
   * @param length the length
   * @return the volume
   */
  public Volume times(Length length) {
    return new Volume(millilitresPerMetre * length.metres() / 1000);
  }

  @Override
  public String toString() {
    return QuantityKind.print(millilitresPerMetre, baseUnit());
  }
}
