package agro.units;

/**
 * A volume of liquid, or of space.
 *
 * @param litres volume in L, finite and zero or more
 */
public record Volume(double litres) implements Quantity<Volume> {

  /** Refuses numbers that no volume has. */
  public Volume {
    litres = QuantityKind.VOLUME.zeroOrMore(litres);
  }

  /**
   * A volume in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the volume
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static Volume of(double value, Unit<Volume> unit) {
    return new Volume(QuantityKind.VOLUME.baseOf(value, unit));
  }

  /**
   * A volume as people write it, for example {@code "15 L"}.
   *
   * @param text one number with its unit
   * @return the volume
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static Volume parse(String text) {
    return new Volume(TypedReading.single(QuantityText.parse(text), QuantityKind.VOLUME));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<Volume> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<Volume> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.VOLUME);
    double high = TypedReading.high(parsed, QuantityKind.VOLUME);
    return new QuantityRange<>(new Volume(low), new Volume(high));
  }

  /**
   * A volume in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "[gal_us]"}
   * @return the volume
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     volume
   */
  public static Volume ofUcum(double value, String code) {
    var factor = UcumReader.factor(code, QuantityKind.VOLUME, VolumeUnit.LITRE);
    return new Volume(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return litres;
  }

  @Override
  public Unit<Volume> baseUnit() {
    return VolumeUnit.LITRE;
  }

  @Override
  public Volume withBaseValue(double value) {
    return new Volume(value);
  }

  /**
   * The mass of this volume.
   *
   * @param density density of the liquid or solid
   * @return the mass
   */
  public Mass times(Density density) {
    return new Mass(litres * density.kilogramsPerLitre());
  }

  /**
   * The flow that gives this volume in a time.
   *
   * @param time the time, above zero
   * @return the flow
   */
  public FlowRate dividedBy(WorkTime time) {
    return new FlowRate(litres * 60 / time.seconds());
  }

  /**
   * This volume spread over an area.
   *
   * @param area the area, above zero
   * @return the volume per area
   */
  public VolumePerArea dividedBy(Area area) {
    return new VolumePerArea(litres * 10_000 / area.squareMetres());
  }

  /**
   * The area that this volume covers.
   *
   * @param rate volume per area, above zero
   * @return the area
   */
  public Area dividedBy(VolumePerArea rate) {
    return new Area(litres * 10_000 / rate.litresPerHectare());
  }

  @Override
  public String toString() {
    return QuantityKind.print(litres, baseUnit());
  }
}
