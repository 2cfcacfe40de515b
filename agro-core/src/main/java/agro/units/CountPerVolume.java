package agro.units;

import java.util.Objects;

/**
 * A count per volume: so many living units, spores or international units. It knows what was
 * counted and never becomes a mass: nobody can weigh a colony-forming unit.
 *
 * @param perMillilitre number per mL, finite and zero or more
 * @param counted what was counted
 */
public record CountPerVolume(double perMillilitre, Counted counted)
    implements Quantity<CountPerVolume> {

  /** Refuses numbers that no count per volume has. */
  public CountPerVolume {
    perMillilitre = QuantityKind.COUNT_PER_VOLUME.zeroOrMore(perMillilitre);
    Objects.requireNonNull(counted, "counted");
  }

  /**
   * A count per volume in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit, which says what was counted
   * @return the count per volume
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static CountPerVolume of(double value, Unit<CountPerVolume> unit) {
    return new CountPerVolume(QuantityKind.COUNT_PER_VOLUME.baseOf(value, unit), Counted.of(unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param counted what is counted
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<CountPerVolume> unit(Counted counted, Unit<Volume> denominator) {
    return RatioUnit.of(QuantityKind.COUNT_PER_VOLUME, counted, denominator);
  }

  /**
   * A count per volume as people write it, for example {@code "10^8 spores/mL"}.
   *
   * @param text one number with its unit
   * @return the count per volume
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static CountPerVolume parse(String text) {
    var parsed = QuantityText.parse(text);
    double base = TypedReading.single(parsed, QuantityKind.COUNT_PER_VOLUME);
    return new CountPerVolume(base, TypedReading.counted(parsed));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<CountPerVolume> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<CountPerVolume> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.COUNT_PER_VOLUME);
    double high = TypedReading.high(parsed, QuantityKind.COUNT_PER_VOLUME);
    return new QuantityRange<>(
        new CountPerVolume(low, TypedReading.counted(parsed)),
        new CountPerVolume(high, TypedReading.counted(parsed)));
  }

  /**
   * A count per volume in a unit given as a UCUM code. An annotation such as <code>{spores}</code>
   * carries no meaning in UCUM, so only colony-forming units and international units can be told
   * apart.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "[CFU]/mL"}
   * @return the count per volume
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     count per volume of these units
   */
  public static CountPerVolume ofUcum(double value, String code) {
    var counted = Counted.ofUcum(code);
    var factor = UcumReader.factor(code, QuantityKind.COUNT_PER_VOLUME, counted.perMillilitre());
    return new CountPerVolume(factor.convert(value), counted);
  }

  @Override
  public double in(Unit<CountPerVolume> unit) {
    return unit.fromBase(counted.onlyIn(unit, perMillilitre));
  }

  @Override
  public double inBaseUnit() {
    return perMillilitre;
  }

  @Override
  public Unit<CountPerVolume> baseUnit() {
    return counted.perMillilitre();
  }

  @Override
  public CountPerVolume withBaseValue(double value) {
    return new CountPerVolume(value, counted);
  }

  /**
   * The count in, or for, an amount.
   *
   * @param amount the volume
   * @return the count
   */
  public Count times(Volume amount) {
    return new Count(perMillilitre * amount.litres() * 1000, counted);
  }

  @Override
  public String toString() {
    return QuantityKind.print(perMillilitre, baseUnit());
  }
}
