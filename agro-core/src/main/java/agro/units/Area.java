package agro.units;

/**
 * An area of land, of leaves or of wall.
 *
 * @param squareMetres area in m², finite and zero or more
 */
public record Area(double squareMetres) implements Quantity<Area> {

  /** Refuses numbers that no area has. */
  public Area {
    squareMetres = QuantityKind.AREA.zeroOrMore(squareMetres);
  }

  /**
   * An area in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the area
   * @throws IllegalArgumentException if the number is not finite or below zero
   */
  public static Area of(double value, Unit<Area> unit) {
    return new Area(QuantityKind.AREA.baseOf(value, unit));
  }

  /**
   * An area as people write it, for example {@code "2.5 acres"}.
   *
   * @param text one number with its unit
   * @return the area
   * @throws UnreadableQuantity if the text is not clear, is a range or says another kind
   */
  public static Area parse(String text) {
    return new Area(TypedReading.single(QuantityText.parse(text), QuantityKind.AREA));
  }

  /**
   * A range as people write it; a single amount is a range of one.
   *
   * @param text one number, or two with a dash or "to", and their unit
   * @return the range
   * @throws UnreadableQuantity if the text is not clear or says another kind
   */
  public static QuantityRange<Area> parseRange(String text) {
    return from(QuantityText.parse(text));
  }

  /**
   * Takes over what was read from a text.
   *
   * @param parsed number or range with its units
   * @return the range
   * @throws UnreadableQuantity if the text says another kind
   */
  public static QuantityRange<Area> from(ParsedQuantity parsed) {
    double low = TypedReading.low(parsed, QuantityKind.AREA);
    double high = TypedReading.high(parsed, QuantityKind.AREA);
    return new QuantityRange<>(new Area(low), new Area(high));
  }

  /**
   * An area in a unit given as a UCUM code.
   *
   * @param value number in that unit
   * @param code case-sensitive code, for example {@code "har"}
   * @return the area
   * @throws UnreadableQuantity if the code is none of UCUM, looks like another unit, or is not an
   *     area
   */
  public static Area ofUcum(double value, String code) {
    var factor = UcumReader.factor(code, QuantityKind.AREA, AreaUnit.SQUARE_METRE);
    return new Area(factor.convert(value));
  }

  @Override
  public double inBaseUnit() {
    return squareMetres;
  }

  @Override
  public Unit<Area> baseUnit() {
    return AreaUnit.SQUARE_METRE;
  }

  @Override
  public Area withBaseValue(double value) {
    return new Area(value);
  }

  /**
   * The length of a strip of this area.
   *
   * @param width width of the strip, above zero
   * @return the length
   */
  public Length dividedBy(Length width) {
    return new Length(squareMetres / width.metres());
  }

  @Override
  public String toString() {
    return QuantityKind.print(squareMetres, baseUnit());
  }
}
