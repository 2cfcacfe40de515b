package agro.units;

/**
 * A volume per area, whatever liquid and whatever area it is.
 *
 * @param litresPerHectare volume per area in L/ha, finite and zero or more
 */
public record VolumePerArea(double litresPerHectare) implements Quantity<VolumePerArea> {

  /** Refuses numbers that no volume per area has. */
  public VolumePerArea {
    litresPerHectare = QuantityKind.VOLUME_PER_AREA.zeroOrMore(litresPerHectare);
  }

  /**
   * A volume per area in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the volume per area
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static VolumePerArea of(double value, Unit<VolumePerArea> unit) {
    return new VolumePerArea(QuantityKind.VOLUME_PER_AREA.baseOf(value, unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param numerator unit above the line
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<VolumePerArea> unit(Unit<Volume> numerator, Unit<Area> denominator) {
    return RatioUnit.of(QuantityKind.VOLUME_PER_AREA, numerator, denominator);
  }

  /**
   * A volume per area as people write it, for example {@code "0.75 L/ha"}.
   *
   * @param text one number with its unit
   * @return the volume per area
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static VolumePerArea parse(String text) {
    return new VolumePerArea(
        TypedReading.single(QuantityText.parse(text), QuantityKind.VOLUME_PER_AREA));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<VolumePerArea> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<VolumePerArea> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.VOLUME_PER_AREA);
    double high = TypedReading.high(parsed, QuantityKind.VOLUME_PER_AREA);
    return new QuantityRange<>(new VolumePerArea(low), new VolumePerArea(high));
  }

  /**
   * A volume per area in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "L/har"}
   * @return the volume per area
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     volume per area
   */
  public static VolumePerArea ofUcum(double value, String code) {
    var factor =
        UcumReader.factor(code, QuantityKind.VOLUME_PER_AREA, VolumePerAreaUnit.LITRE_PER_HECTARE);
    return new VolumePerArea(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return litresPerHectare;
  }

  @Override
  public Unit<VolumePerArea> baseUnit() {
    return VolumePerAreaUnit.LITRE_PER_HECTARE;
  }

  @Override
  public VolumePerArea withBaseValue(double value) {
    return new VolumePerArea(value);
  }

  /**
   * The volume for an area.
   *
   * @param area the area
   * @return the volume
   */
  public Volume times(Area area) {
    return new Volume(litresPerHectare * area.squareMetres() / 10_000);
  }

  /**
   * The mass per area of what is dissolved in this volume per area.
   *
   * @param content mass per volume
   * @return the mass per area
   */
  public MassPerArea times(MassPerVolume content) {
    return new MassPerArea(litresPerHectare * content.gramsPerLitre() / 1000);
  }

  @Override
  public String toString() {
    return QuantityKind.print(litresPerHectare, baseUnit());
  }
}
