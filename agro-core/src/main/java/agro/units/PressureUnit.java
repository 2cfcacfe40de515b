package agro.units;

import java.util.List;

/** Units of pressure. */
public enum PressureUnit implements Unit<Pressure> {
  /** Kilopascal. */
  KILOPASCAL("kPa", "kilopascal", "kPa", 1, 1, "kilopascals"),
  /** Pascal. */
  PASCAL("Pa", "pascal", "Pa", 1, 1000, "pascals"),
  /** Megapascal. */
  MEGAPASCAL("MPa", "megapascal", "MPa", 1000, 1, "megapascals"),
  /** Bar, 100 kPa. */
  BAR("bar", "bar", "bar", 100, 1, "bars"),
  /** Pound-force per square inch. */
  POUND_PER_SQUARE_INCH(
      "psi",
      "pound-force per square inch",
      "[psi]",
      8896443230521L,
      1290320000000L,
      "lbf/in²",
      "lb/in²",
      "lb/sq in",
      "psig"),
  /** Technical atmosphere, kilogram-force per square centimetre, 98.0665 kPa. */
  TECHNICAL_ATMOSPHERE(
      "kgf/cm²",
      "kilogram-force per square centimetre",
      "att",
      196133,
      2000,
      "kg/cm²",
      "kg/cm2",
      "kgf/cm2",
      "kg/sq cm",
      "kgf/sq cm",
      "technical atmosphere",
      "technical atmospheres");

  private final UnitDefinition definition;
  private final List<String> spellings;

  PressureUnit(
      String symbol,
      String words,
      String ucum,
      long numerator,
      long denominator,
      String... spellings) {
    this.definition =
        new UnitDefinition(symbol, words, ucum, ExactFactor.of(numerator, denominator));
    this.spellings = List.of(spellings);
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.PRESSURE;
  }

  @Override
  public UnitDefinition definition() {
    return definition;
  }

  /** What else people write for this unit, beside its symbol and its name. */
  List<String> spellings() {
    return spellings;
  }

  @Override
  public String toString() {
    return definition.symbol();
  }
}
