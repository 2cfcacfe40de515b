package agro.units;

import java.util.Objects;

/**
 * A count per area: so many living units, spores or international units. It knows what was counted
 * and never becomes a mass: nobody can weigh a colony-forming unit.
 *
 * @param perHectare number per ha, finite and zero or more
 * @param counted what was counted
 */
public record CountPerArea(double perHectare, Counted counted) implements Quantity<CountPerArea> {

  /** Refuses numbers that no count per area has. */
  public CountPerArea {
    perHectare = QuantityKind.COUNT_PER_AREA.zeroOrMore(perHectare);
    Objects.requireNonNull(counted, "counted");
  }

  /**
   * A count per area in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit, which says what was counted
   * @return the count per area
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static CountPerArea of(double value, Unit<CountPerArea> unit) {
    return new CountPerArea(QuantityKind.COUNT_PER_AREA.baseOf(value, unit), Counted.of(unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param counted what is counted
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<CountPerArea> unit(Counted counted, Unit<Area> denominator) {
    return RatioUnit.of(QuantityKind.COUNT_PER_AREA, counted, denominator);
  }

  /**
   * A count per area as people write it, for example {@code "10^12 conidia/ha"}.
   *
   * @param text one number with its unit
   * @return the count per area
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static CountPerArea parse(String text) {
    var parsed = QuantityText.parse(text);
    double base = TypedReading.single(parsed, QuantityKind.COUNT_PER_AREA);
    return new CountPerArea(base, TypedReading.counted(parsed));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<CountPerArea> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<CountPerArea> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.COUNT_PER_AREA);
    double high = TypedReading.high(parsed, QuantityKind.COUNT_PER_AREA);
    return new QuantityRange<>(
        new CountPerArea(low, TypedReading.counted(parsed)),
        new CountPerArea(high, TypedReading.counted(parsed)));
  }

  /**
   * A count per area in a unit given as a UCUM code. An annotation such as <code>{spores}</code>
   * carries no meaning in UCUM, so only colony-forming units and international units can be told
   * apart.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "[CFU]/har"}
   * @return the count per area
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     count per area of these units
   */
  public static CountPerArea ofUcum(double value, String code) {
    var counted = Counted.ofUcum(code);
    var factor = UcumReader.factor(code, QuantityKind.COUNT_PER_AREA, counted.perHectare());
    return new CountPerArea(factor.convert(value), counted);
  }

  @Override
  public double in(Unit<CountPerArea> unit) {
    return unit.fromBase(counted.onlyIn(unit, perHectare));
  }

  @Override
  public double inBaseUnit() {
    return perHectare;
  }

  @Override
  public Unit<CountPerArea> baseUnit() {
    return counted.perHectare();
  }

  @Override
  public CountPerArea withBaseValue(double value) {
    return new CountPerArea(value, counted);
  }

  /**
   * The count in, or for, an amount.
   *
   * @param amount the area
   * @return the count
   */
  public Count times(Area amount) {
    return new Count(perHectare * amount.squareMetres() / 10_000, counted);
  }

  @Override
  public String toString() {
    return QuantityKind.print(perHectare, baseUnit());
  }
}
