package agro.units;

/**
 * A length.
 *
 * @param metres length in m, finite and zero or more
 */
public record Length(double metres) implements Quantity<Length> {

  /** Refuses numbers that no length has. */
  public Length {
    metres = QuantityKind.LENGTH.zeroOrMore(metres);
  }

  /**
   * A length in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the length
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static Length of(double value, Unit<Length> unit) {
    return new Length(QuantityKind.LENGTH.baseOf(value, unit));
  }

  /**
   * A length as people write it, for example {@code "0.5 m"}.
   *
   * @param text one number with its unit
   * @return the length
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static Length parse(String text) {
    return new Length(TypedReading.single(QuantityText.parse(text), QuantityKind.LENGTH));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<Length> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<Length> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.LENGTH);
    double high = TypedReading.high(parsed, QuantityKind.LENGTH);
    return new QuantityRange<>(new Length(low), new Length(high));
  }

  /**
   * A length in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "[ft_i]"}
   * @return the length
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     length
   */
  public static Length ofUcum(double value, String code) {
    var factor = UcumReader.factor(code, QuantityKind.LENGTH, LengthUnit.METRE);
    return new Length(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return metres;
  }

  @Override
  public Unit<Length> baseUnit() {
    return LengthUnit.METRE;
  }

  @Override
  public Length withBaseValue(double value) {
    return new Length(value);
  }

  /**
   * The area of a rectangle.
   *
   * @param width the other side
   * @return the area
   */
  public Area times(Length width) {
    return new Area(metres * width.metres());
  }

  /**
   * The speed at which this length is covered.
   *
   * @param time the time it takes, above zero
   * @return the speed
   */
  public Speed dividedBy(WorkTime time) {
    return new Speed(metres / time.seconds());
  }

  @Override
  public String toString() {
    return QuantityKind.print(metres, baseUnit());
  }
}
