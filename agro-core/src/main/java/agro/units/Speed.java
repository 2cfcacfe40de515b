package agro.units;

/**
 * A speed over ground.
 *
 * @param metresPerSecond speed in m/s, finite and zero or more
 */
public record Speed(double metresPerSecond) implements Quantity<Speed> {

  /** Refuses numbers that no speed has. */
  public Speed {
    metresPerSecond = QuantityKind.SPEED.zeroOrMore(metresPerSecond);
  }

  /**
   * A speed in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the speed
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static Speed of(double value, Unit<Speed> unit) {
    return new Speed(QuantityKind.SPEED.baseOf(value, unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param numerator unit above the line
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<Speed> unit(Unit<Length> numerator, Unit<WorkTime> denominator) {
    return RatioUnit.of(QuantityKind.SPEED, numerator, denominator);
  }

  /**
   * A speed as people write it, for example {@code "4 km/h"}.
   *
   * @param text one number with its unit
   * @return the speed
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static Speed parse(String text) {
    return new Speed(TypedReading.single(QuantityText.parse(text), QuantityKind.SPEED));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<Speed> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<Speed> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.SPEED);
    double high = TypedReading.high(parsed, QuantityKind.SPEED);
    return new QuantityRange<>(new Speed(low), new Speed(high));
  }

  /**
   * A speed in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "km/h"}
   * @return the speed
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     speed
   */
  public static Speed ofUcum(double value, String code) {
    var factor = UcumReader.factor(code, QuantityKind.SPEED, SpeedUnit.METRE_PER_SECOND);
    return new Speed(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return metresPerSecond;
  }

  @Override
  public Unit<Speed> baseUnit() {
    return SpeedUnit.METRE_PER_SECOND;
  }

  @Override
  public Speed withBaseValue(double value) {
    return new Speed(value);
  }

  /**
   * The length covered in a time.
   *
   * @param time the time
   * @return the length
   */
  public Length times(WorkTime time) {
    return new Length(metresPerSecond * time.seconds());
  }

  @Override
  public String toString() {
    return QuantityKind.print(metresPerSecond, baseUnit());
  }
}
