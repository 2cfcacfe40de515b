package agro.units;

/**
 * A mass per volume (mass concentration, % w/v): the mass of one thing in a volume of another.
 *
 * @param gramsPerLitre mass per volume in g/L, finite and zero or more
 */
public record MassPerVolume(double gramsPerLitre) implements Quantity<MassPerVolume> {

  /** Refuses numbers that no mass per volume has. */
  public MassPerVolume {
    gramsPerLitre = QuantityKind.MASS_PER_VOLUME.zeroOrMore(gramsPerLitre);
  }

  /**
   * A mass per volume in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the mass per volume
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static MassPerVolume of(double value, Unit<MassPerVolume> unit) {
    return new MassPerVolume(QuantityKind.MASS_PER_VOLUME.baseOf(value, unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param numerator unit above the line
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<MassPerVolume> unit(Unit<Mass> numerator, Unit<Volume> denominator) {
    return RatioUnit.of(QuantityKind.MASS_PER_VOLUME, numerator, denominator);
  }

  /**
   * A mass per volume as people write it, for example {@code "0.3 g per litre"}.
   *
   * @param text one number with its unit
   * @return the mass per volume
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static MassPerVolume parse(String text) {
    return new MassPerVolume(
        TypedReading.single(QuantityText.parse(text), QuantityKind.MASS_PER_VOLUME));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<MassPerVolume> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<MassPerVolume> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.MASS_PER_VOLUME);
    double high = TypedReading.high(parsed, QuantityKind.MASS_PER_VOLUME);
    return new QuantityRange<>(new MassPerVolume(low), new MassPerVolume(high));
  }

  /**
   * A mass per volume in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "g/L"}
   * @return the mass per volume
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     mass per volume
   */
  public static MassPerVolume ofUcum(double value, String code) {
    var factor =
        UcumReader.factor(code, QuantityKind.MASS_PER_VOLUME, MassPerVolumeUnit.GRAM_PER_LITRE);
    return new MassPerVolume(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return gramsPerLitre;
  }

  @Override
  public Unit<MassPerVolume> baseUnit() {
    return MassPerVolumeUnit.GRAM_PER_LITRE;
  }

  @Override
  public MassPerVolume withBaseValue(double value) {
    return new MassPerVolume(value);
  }

  /**
   * The mass for, or in, a volume.
   *
   * @param volume the volume
   * @return the mass
   */
  public Mass times(Volume volume) {
    return new Mass(gramsPerLitre * volume.litres() / 1000);
  }

  /**
   * The content per mass.
   *
   * @param density density of the whole
   * @return the mass per mass
   */
  public MassPerMass dividedBy(Density density) {
    return new MassPerMass(gramsPerLitre / density.kilogramsPerLitre());
  }

  @Override
  public String toString() {
    return QuantityKind.print(gramsPerLitre, baseUnit());
  }
}
