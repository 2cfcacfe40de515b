package agro.units;

import java.util.List;

/** Units of mass. */
public enum MassUnit implements Unit<Mass> {
  /** Kilogram. */
  KILOGRAM(
      "kg",
      "kilogram",
      "kg",
      1,
      1,
      "kilograms",
      "kilogramme",
      "kilogrammes",
      "kgs",
      "kilo",
      "kilos"),
  /** Gram. */
  GRAM("g", "gram", "g", 1, 1000, "grams", "gramme", "grammes", "gm", "gms", "grm"),
  /** Milligram. */
  MILLIGRAM("mg", "milligram", "mg", 1, 1000000, "milligrams", "milligramme", "milligrammes"),
  /** Microgram. */
  MICROGRAM(
      "µg",
      "microgram",
      "ug",
      1,
      1000000000,
      "μg",
      "ug",
      "mcg",
      "micrograms",
      "microgramme",
      "microgrammes"),
  /** Quintal, 100 kg (value from memory). */
  QUINTAL("q", "quintal", "100.kg", 100, 1, "quintals", "qtl", "qtls"),
  /** Tonne, 1000 kg. */
  TONNE(
      "t",
      "tonne",
      "t",
      1000,
      1,
      "tonnes",
      "metric ton",
      "metric tons",
      "ton (metric)",
      "tons (metric)"),
  /** Avoirdupois pound, 0.453 592 37 kg. */
  POUND("lb", "pound", "[lb_av]", 45359237, 100000000, "lbs", "pounds"),
  /** Avoirdupois ounce, 1/16 lb; a dry ounce, not a fluid one. */
  OUNCE("oz av", "avoirdupois ounce", "[oz_av]", 45359237, 1600000000),
  /** Grain, 1/7000 lb. */
  GRAIN("gr", "grain", "[gr]", 6479891L, 100000000000L, "grains"),
  /** Short ton, 2000 lb. */
  SHORT_TON("short ton", "short ton", "[ston_av]", 45359237, 50000),
  /** Long ton, 2240 lb. */
  LONG_TON("long ton", "long ton", "[lton_av]", 317514659, 312500),
  /** Short hundredweight, 100 lb. */
  SHORT_HUNDREDWEIGHT("short cwt", "short hundredweight", "[scwt_av]", 45359237, 1000000),
  /** Long hundredweight, 112 lb. */
  LONG_HUNDREDWEIGHT("long cwt", "long hundredweight", "[lcwt_av]", 317514659, 6250000);

  private final UnitDefinition definition;
  private final List<String> spellings;

  MassUnit(
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
    return QuantityKind.MASS;
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
