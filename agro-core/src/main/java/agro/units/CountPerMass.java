package agro.units;

import java.util.Objects;

/**
 * A count per mass: so many living units, spores or international units. It knows what was counted
 * and never becomes a mass: nobody can weigh a colony-forming unit.
 *
 * @param perGram number per g, finite and zero or more
 * @param counted what was counted
 */
public record CountPerMass(double perGram, Counted counted) implements Quantity<CountPerMass> {

  /** Refuses numbers that no count per mass has. */
  public CountPerMass {
    perGram = QuantityKind.COUNT_PER_MASS.zeroOrMore(perGram);
    Objects.requireNonNull(counted, "counted");
  }

  /**
   * A count per mass in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit, which says what was counted
   * @return the count per mass
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static CountPerMass of(double value, Unit<CountPerMass> unit) {
    return new CountPerMass(QuantityKind.COUNT_PER_MASS.baseOf(value, unit), Counted.of(unit));
  }

  /**
   * A unit of this kind put together from two.
   *
   * @param counted what is counted
   * @param denominator unit below the line
   * @return the unit
   */
  public static Unit<CountPerMass> unit(Counted counted, Unit<Mass> denominator) {
    return RatioUnit.of(QuantityKind.COUNT_PER_MASS, counted, denominator);
  }

  /**
   * A count per mass as people write it, for example {@code "2 x 10^9 CFU/g"}.
   *
   * @param text one number with its unit
   * @return the count per mass
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static CountPerMass parse(String text) {
    var parsed = QuantityText.parse(text);
    double base = TypedReading.single(parsed, QuantityKind.COUNT_PER_MASS);
    return new CountPerMass(base, TypedReading.counted(parsed));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<CountPerMass> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<CountPerMass> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.COUNT_PER_MASS);
    double high = TypedReading.high(parsed, QuantityKind.COUNT_PER_MASS);
    return new QuantityRange<>(
        new CountPerMass(low, TypedReading.counted(parsed)),
        new CountPerMass(high, TypedReading.counted(parsed)));
  }

  /**
   * A count per mass in a unit given as a UCUM code. An annotation such as <code>{spores}</code>
   * carries no meaning in UCUM, so only colony-forming units and international units can be told
   * apart.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "[CFU]/g"}
   * @return the count per mass
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not a
   *     count per mass of these units
   */
  public static CountPerMass ofUcum(double value, String code) {
    var counted = Counted.ofUcum(code);
    var factor = UcumReader.factor(code, QuantityKind.COUNT_PER_MASS, counted.perGram());
    return new CountPerMass(factor.convert(value), counted);
  }

  @Override
  public double in(Unit<CountPerMass> unit) {
    return unit.fromBase(counted.onlyIn(unit, perGram));
  }

  @Override
  public double inBaseUnit() {
    return perGram;
  }

  @Override
  public Unit<CountPerMass> baseUnit() {
    return counted.perGram();
  }

  @Override
  public CountPerMass withBaseValue(double value) {
    return new CountPerMass(value, counted);
  }

  /**
   * The count in, or for, an amount.
   *
   * @param amount the mass
   * @return the count
   */
  public Count times(Mass amount) {
    return new Count(perGram * amount.kilograms() * 1000, counted);
  }

  @Override
  public String toString() {
    return QuantityKind.print(perGram, baseUnit());
  }
}
