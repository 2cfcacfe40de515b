package agro.units;

import java.util.Objects;

/**
 * A number of living units, spores or international units.
 *
 * @param number the number, finite and zero or more
 * @param counted what was counted
 */
public record Count(double number, Counted counted) implements Quantity<Count> {

  /** Refuses numbers that no count has. */
  public Count {
    number = QuantityKind.COUNT.zeroOrMore(number);
    Objects.requireNonNull(counted, "counted");
  }

  /**
   * A count of a stated thing.
   *
   * @param value the number
   * @param unit what was counted
   * @return the count
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static Count of(double value, Unit<Count> unit) {
    return new Count(QuantityKind.COUNT.baseOf(value, unit), Counted.of(unit));
  }

  /**
   * A count as people write it, for example {@code "10^9 CFU"}.
   *
   * @param text one number with its unit
   * @return the count
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static Count parse(String text) {
    var parsed = QuantityText.parse(text);
    double base = TypedReading.single(parsed, QuantityKind.COUNT);
    return new Count(base, TypedReading.counted(parsed));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<Count> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<Count> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.COUNT);
    double high = TypedReading.high(parsed, QuantityKind.COUNT);
    return new QuantityRange<>(
        new Count(low, TypedReading.counted(parsed)),
        new Count(high, TypedReading.counted(parsed)));
  }

  @Override
  public double in(Unit<Count> unit) {
    return unit.fromBase(counted.onlyIn(unit, number));
  }

  @Override
  public double inBaseUnit() {
    return number;
  }

  @Override
  public Unit<Count> baseUnit() {
    return counted;
  }

  @Override
  public Count withBaseValue(double value) {
    return new Count(value, counted);
  }

  @Override
  public String toString() {
    return QuantityKind.print(number, counted);
  }
}
