package agro.units;

/**
 * A gauge pressure.
 *
 * @param kilopascals pressure in kPa, finite and zero or more
 */
public record Pressure(double kilopascals) implements Quantity<Pressure> {

  /** Refuses numbers that no pressure has. */
  public Pressure {
    kilopascals = QuantityKind.PRESSURE.zeroOrMore(kilopascals);
  }

  /**
   * A pressure in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the pressure
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static Pressure of(double value, Unit<Pressure> unit) {
    return new Pressure(QuantityKind.PRESSURE.baseOf(value, unit));
  }

  /**
   * A pressure as people write it, for example {@code "3 bar"}.
   *
   * @param text one number with its unit
   * @return the pressure
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static Pressure parse(String text) {
    return new Pressure(TypedReading.single(QuantityText.parse(text), QuantityKind.PRESSURE));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<Pressure> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<Pressure> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.PRESSURE);
    double high = TypedReading.high(parsed, QuantityKind.PRESSURE);
    return new QuantityRange<>(new Pressure(low), new Pressure(high));
  }

  /**
   * A pressure in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "bar"}
   * @return the pressure
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     pressure
   */
  public static Pressure ofUcum(double value, String code) {
    var factor = UcumReader.factor(code, QuantityKind.PRESSURE, PressureUnit.KILOPASCAL);
    return new Pressure(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return kilopascals;
  }

  @Override
  public Unit<Pressure> baseUnit() {
    return PressureUnit.KILOPASCAL;
  }

  @Override
  public Pressure withBaseValue(double value) {
    return new Pressure(value);
  }

  @Override
  public String toString() {
    return QuantityKind.print(kilopascals, baseUnit());
  }
}
