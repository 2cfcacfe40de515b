package agro.units;

/**
 * A volume per volume (volume fraction, % v/v).
 *
 * @param millilitresPerLitre volume per volume in mL/L, finite and zero or more
 */
public record VolumePerVolume(double millilitresPerLitre) implements Quantity<VolumePerVolume> {

  /** Refuses numbers that no volume per volume has. */
  public VolumePerVolume {
    millilitresPerLitre = QuantityKind.VOLUME_PER_VOLUME.zeroOrMore(millilitresPerLitre);
  }

  /**
   * A volume per volume in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the volume per volume
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static VolumePerVolume of(double value, Unit<VolumePerVolume> unit) {
    return new VolumePerVolume(QuantityKind.VOLUME_PER_VOLUME.baseOf(value, unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param numerator unit above the line
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<VolumePerVolume> unit(Unit<Volume> numerator, Unit<Volume> denominator) {
    return RatioUnit.of(QuantityKind.VOLUME_PER_VOLUME, numerator, denominator);
  }

  /**
   * A volume per volume as people write it, for example {@code "2 pt/100 gal (US)"}.
   *
   * @param text one number with its unit
   * @return the volume per volume
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static VolumePerVolume parse(String text) {
    return new VolumePerVolume(
        TypedReading.single(QuantityText.parse(text), QuantityKind.VOLUME_PER_VOLUME));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<VolumePerVolume> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<VolumePerVolume> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.VOLUME_PER_VOLUME);
    double high = TypedReading.high(parsed, QuantityKind.VOLUME_PER_VOLUME);
    return new QuantityRange<>(new VolumePerVolume(low), new VolumePerVolume(high));
  }

  /**
   * A volume per volume in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "mL/L"}
   * @return the volume per volume
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     volume per volume
   */
  public static VolumePerVolume ofUcum(double value, String code) {
    var factor =
        UcumReader.factor(
            code, QuantityKind.VOLUME_PER_VOLUME, VolumePerVolumeUnit.MILLILITRE_PER_LITRE);
    return new VolumePerVolume(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return millilitresPerLitre;
  }

  @Override
  public Unit<VolumePerVolume> baseUnit() {
    return VolumePerVolumeUnit.MILLILITRE_PER_LITRE;
  }

  @Override
  public VolumePerVolume withBaseValue(double value) {
    return new VolumePerVolume(value);
  }

  /**
   * The volume for, or in, another volume.
   *
   * @param whole the volume of the whole
   * @return the volume of the part
   */
  public Volume times(Volume whole) {
    return new Volume(millilitresPerLitre * whole.litres() / 1000);
  }

  @Override
  public String toString() {
    return QuantityKind.print(millilitresPerLitre, baseUnit());
  }
}
