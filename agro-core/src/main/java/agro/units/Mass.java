package agro.units;

/**
 * A mass.
 *
 * @param kilograms mass in kg, finite and zero or more
 */
public record Mass(double kilograms) implements Quantity<Mass> {

  /** Refuses numbers that no mass has. */
  public Mass {
    kilograms = QuantityKind.MASS.zeroOrMore(kilograms);
  }

  /**
   * A mass in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the mass
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static Mass of(double value, Unit<Mass> unit) {
    return new Mass(QuantityKind.MASS.baseOf(value, unit));
  }

  /**
   * A mass as people write it, for example {@code "2 1/2 lb"}.
   *
   * @param text one number with its unit
   * @return the mass
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static Mass parse(String text) {
    return new Mass(TypedReading.single(QuantityText.parse(text), QuantityKind.MASS));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<Mass> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<Mass> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.MASS);
    double high = TypedReading.high(parsed, QuantityKind.MASS);
    return new QuantityRange<>(new Mass(low), new Mass(high));
  }

  /**
   * A mass in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "[lb_av]"}
   * @return the mass
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     mass
   */
  public static Mass ofUcum(double value, String code) {
    var factor = UcumReader.factor(code, QuantityKind.MASS, MassUnit.KILOGRAM);
    return new Mass(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return kilograms;
  }

  @Override
  public Unit<Mass> baseUnit() {
    return MassUnit.KILOGRAM;
  }

  @Override
  public Mass withBaseValue(double value) {
    return new Mass(value);
  }

  /**
   * The volume of this mass.
   *
   * @param density density of the liquid or solid
   * @return the volume
   */
  public Volume dividedBy(Density density) {
    return new Volume(kilograms / density.kilogramsPerLitre());
  }

  /**
   * This mass spread over an area.
   *
   * @param area the area, above zero
   * @return the mass per area
   */
  public MassPerArea dividedBy(Area area) {
    return new MassPerArea(kilograms * 10_000 / area.squareMetres());
  }

  /**
   * The area that this mass covers.
   *
   * @param rate mass per area, above zero
   * @return the area
   */
  public Area dividedBy(MassPerArea rate) {
    return new Area(kilograms * 10_000 / rate.kilogramsPerHectare());
  }

  @Override
  public String toString() {
    return QuantityKind.print(kilograms, baseUnit());
  }
}
