package agro.units;

/**
 * A span of working or running time. Dates and waiting periods are the business of java.time.
 *
 * @param seconds time in s, finite and zero or more
 */
public record WorkTime(double seconds) implements Quantity<WorkTime> {

  /** Refuses numbers that no time has. */
  public WorkTime {
    seconds = QuantityKind.WORK_TIME.zeroOrMore(seconds);
  }

  /**
   * A time in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the time
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static WorkTime of(double value, Unit<WorkTime> unit) {
    return new WorkTime(QuantityKind.WORK_TIME.baseOf(value, unit));
  }

  /**
   * A time as people write it, for example {@code "25 min"}.
   *
   * @param text one number with its unit
   * @return the time
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static WorkTime parse(String text) {
    return new WorkTime(TypedReading.single(QuantityText.parse(text), QuantityKind.WORK_TIME));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<WorkTime> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<WorkTime> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.WORK_TIME);
    double high = TypedReading.high(parsed, QuantityKind.WORK_TIME);
    return new QuantityRange<>(new WorkTime(low), new WorkTime(high));
  }

  /**
   * A time in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "min"}
   * @return the time
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     time
   */
  public static WorkTime ofUcum(double value, String code) {
    var factor = UcumReader.factor(code, QuantityKind.WORK_TIME, WorkTimeUnit.SECOND);
    return new WorkTime(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return seconds;
  }

  @Override
  public Unit<WorkTime> baseUnit() {
    return WorkTimeUnit.SECOND;
  }

  @Override
  public WorkTime withBaseValue(double value) {
    return new WorkTime(value);
  }

  @Override
  public String toString() {
    return QuantityKind.print(seconds, baseUnit());
  }
}
