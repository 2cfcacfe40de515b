package agro.units;

/**
 * A volume per mass, such as a liquid dressing per mass of seed.
 *
 * @param millilitresPerKilogram volume per mass in mL/kg, finite and zero or more
 */
public record VolumePerMass(double millilitresPerKilogram) implements Quantity<VolumePerMass> {

  /** Refuses numbers that no volume per mass has. */
  public VolumePerMass {
    millilitresPerKilogram = QuantityKind.VOLUME_PER_MASS.zeroOrMore(millilitresPerKilogram);
  }

  /**
   * A volume per mass in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the volume per mass
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static VolumePerMass of(double value, Unit<VolumePerMass> unit) {
    return new VolumePerMass(QuantityKind.VOLUME_PER_MASS.baseOf(value, unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param numerator unit above the line
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<VolumePerMass> unit(Unit<Volume> numerator, Unit<Mass> denominator) {
    return RatioUnit.of(QuantityKind.VOLUME_PER_MASS, numerator, denominator);
  }

  /**
   * A volume per mass as people write it, for example {@code "4 mL/kg"}.
   *
   * @param text one number with its unit
   * @return the volume per mass
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static VolumePerMass parse(String text) {
    return new VolumePerMass(
        TypedReading.single(QuantityText.parse(text), QuantityKind.VOLUME_PER_MASS));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<VolumePerMass> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<VolumePerMass> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.VOLUME_PER_MASS);
    double high = TypedReading.high(parsed, QuantityKind.VOLUME_PER_MASS);
    return new QuantityRange<>(new VolumePerMass(low), new VolumePerMass(high));
  }

  /**
   * A volume per mass in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "mL/kg"}
   * @return the volume per mass
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     volume per mass
   */
  public static VolumePerMass ofUcum(double value, String code) {
    var factor =
        UcumReader.factor(
            code, QuantityKind.VOLUME_PER_MASS, VolumePerMassUnit.MILLILITRE_PER_KILOGRAM);
    return new VolumePerMass(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return millilitresPerKilogram;
  }

  @Override
  public Unit<VolumePerMass> baseUnit() {
    return VolumePerMassUnit.MILLILITRE_PER_KILOGRAM;
  }

  @Override
  public VolumePerMass withBaseValue(double value) {
    return new VolumePerMass(value);
  }

  /**
   * The volume for a mass.
   *
   * @param mass the mass
   * @return the volume
   */
  public Volume times(Mass mass) {
    return new Volume(millilitresPerKilogram * mass.kilograms() / 1000);
  }

  @Override
  public String toString() {
    return QuantityKind.print(millilitresPerKilogram, baseUnit());
  }
}
