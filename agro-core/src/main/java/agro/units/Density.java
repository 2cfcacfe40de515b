package agro.units;

/**
 * The density of a liquid or the bulk density of a solid: the mass of a thing per volume of the
 * same thing. Not to be mixed up with {@link MassPerVolume}, the mass of one thing in a volume of
 * another.
 *
 * @param kilogramsPerLitre density in kg/L, finite and above zero
 */
public record Density(double kilogramsPerLitre) implements Quantity<Density> {

  /** Refuses numbers that no density has. */
  public Density {
    kilogramsPerLitre = QuantityKind.DENSITY.aboveZero(kilogramsPerLitre);
  }

  /**
   * A density in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the density
   * @throws IllegalArgumentException if the number is not finite or not above zero
   */
  public static Density of(double value, Unit<Density> unit) {
    return new Density(QuantityKind.DENSITY.baseOf(value, unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param numerator unit above the line
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<Density> unit(Unit<Mass> numerator, Unit<Volume> denominator) {
    return RatioUnit.of(QuantityKind.DENSITY, numerator, denominator);
  }

  /**
   * A density as people write it, for example {@code "1.09 kg/L"}.
   *
   * @param text one number with its unit
   * @return the density
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static Density parse(String text) {
    return new Density(TypedReading.single(QuantityText.parse(text), QuantityKind.DENSITY));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<Density> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<Density> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.DENSITY);
    double high = TypedReading.high(parsed, QuantityKind.DENSITY);
    return new QuantityRange<>(new Density(low), new Density(high));
  }

  /**
   * A density in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "kg/L"}
   * @return the density
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     density
   */
  public static Density ofUcum(double value, String code) {
    var factor = UcumReader.factor(code, QuantityKind.DENSITY, DensityUnit.KILOGRAM_PER_LITRE);
    return new Density(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return kilogramsPerLitre;
  }

  @Override
  public Unit<Density> baseUnit() {
    return DensityUnit.KILOGRAM_PER_LITRE;
  }

  @Override
  public Density withBaseValue(double value) {
    return new Density(value);
  }

  @Override
  public String toString() {
    return QuantityKind.print(kilogramsPerLitre, baseUnit());
  }
}
