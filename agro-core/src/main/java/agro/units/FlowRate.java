package agro.units;

/**
 * A volume per time, such as the flow through a nozzle.
 *
 * @param litresPerMinute flow in L/min, finite and zero or more
 */
public record FlowRate(double litresPerMinute) implements Quantity<FlowRate> {

  /** Refuses numbers that no flow has. */
  public FlowRate {
    litresPerMinute = QuantityKind.FLOW_RATE.zeroOrMore(litresPerMinute);
  }

  /**
   * A flow in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the flow
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static FlowRate of(double value, Unit<FlowRate> unit) {
    return new FlowRate(QuantityKind.FLOW_RATE.baseOf(value, unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param numerator unit above the line
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<FlowRate> unit(Unit<Volume> numerator, Unit<WorkTime> denominator) {
    return RatioUnit.of(QuantityKind.FLOW_RATE, numerator, denominator);
  }

  /**
   * A flow as people write it, for example {@code "1.2 L/min"}.
   *
   * @param text one number with its unit
   * @return the flow
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static FlowRate parse(String text) {
    return new FlowRate(TypedReading.single(QuantityText.parse(text), QuantityKind.FLOW_RATE));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<FlowRate> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<FlowRate> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.FLOW_RATE);
    double high = TypedReading.high(parsed, QuantityKind.FLOW_RATE);
    return new QuantityRange<>(new FlowRate(low), new FlowRate(high));
  }

  /**
   * A flow in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "L/min"}
   * @return the flow
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     flow
   */
  public static FlowRate ofUcum(double value, String code) {
    var factor = UcumReader.factor(code, QuantityKind.FLOW_RATE, FlowRateUnit.LITRE_PER_MINUTE);
    return new FlowRate(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return litresPerMinute;
  }

  @Override
  public Unit<FlowRate> baseUnit() {
    return FlowRateUnit.LITRE_PER_MINUTE;
  }

  @Override
  public FlowRate withBaseValue(double value) {
    return new FlowRate(value);
  }

  /**
   * The volume that flows in a time.
   *
   * @param time the time
   * @return the volume
   */
  public Volume times(WorkTime time) {
    return new Volume(litresPerMinute * time.seconds() / 60);
  }

  @Override
  public String toString() {
    return QuantityKind.print(litresPerMinute, baseUnit());
  }
}
