package agro.units;

/**
 * A mass per mass: the content of a solid (mass fraction, % w/w), or a dose per mass of seed,
 * compost or manure.
 *
 * @param gramsPerKilogram mass per mass in g/kg, finite and zero or more
 */
public record MassPerMass(double gramsPerKilogram) implements Quantity<MassPerMass> {

  /** Refuses numbers that no mass per mass has. */
  public MassPerMass {
    gramsPerKilogram = QuantityKind.MASS_PER_MASS.zeroOrMore(gramsPerKilogram);
  }

  /**
   * A mass per mass in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the mass per mass
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static MassPerMass of(double value, Unit<MassPerMass> unit) {
    return new MassPerMass(QuantityKind.MASS_PER_MASS.baseOf(value, unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param numerator unit above the line
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<MassPerMass> unit(Unit<Mass> numerator, Unit<Mass> denominator) {
    return RatioUnit.of(QuantityKind.MASS_PER_MASS, numerator, denominator);
  }

  /**
   * A mass per mass as people write it, for example {@code "5 kg/t"}.
   *
   * @param text one number with its unit
   * @return the mass per mass
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static MassPerMass parse(String text) {
    return new MassPerMass(
        TypedReading.single(QuantityText.parse(text), QuantityKind.MASS_PER_MASS));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<MassPerMass> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<MassPerMass> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.MASS_PER_MASS);
    double high = TypedReading.high(parsed, QuantityKind.MASS_PER_MASS);
    return new QuantityRange<>(new MassPerMass(low), new MassPerMass(high));
  }

  /**
   * A mass per mass in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "g/kg"}
   * @return the mass per mass
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     mass per mass
   */
  public static MassPerMass ofUcum(double value, String code) {
    var factor =
        UcumReader.factor(code, QuantityKind.MASS_PER_MASS, MassPerMassUnit.GRAM_PER_KILOGRAM);
    return new MassPerMass(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return gramsPerKilogram;
  }

  @Override
  public Unit<MassPerMass> baseUnit() {
    return MassPerMassUnit.GRAM_PER_KILOGRAM;
  }

  @Override
  public MassPerMass withBaseValue(double value) {
    return new MassPerMass(value);
  }

  /**
   * The mass for, or in, another mass.
   *
   * @param whole the mass of the whole
   * @return the mass of the part
   */
  public Mass times(Mass whole) {
    return new Mass(gramsPerKilogram * whole.kilograms() / 1000);
  }

  /**
   * The content per volume: 18.5 % w/w at 1.09 kg/L are 201.65 g/L.
   *
   * @param density density of the whole
   * @return the mass per volume
   */
  public MassPerVolume times(Density density) {
    return new MassPerVolume(gramsPerKilogram * density.kilogramsPerLitre());
  }

  @Override
  public String toString() {
    return QuantityKind.print(gramsPerKilogram, baseUnit());
  }
}
