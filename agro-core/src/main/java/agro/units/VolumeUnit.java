package agro.units;

import java.util.List;

/** Units of volume. */
public enum VolumeUnit implements Unit<Volume> {
  /** Litre. */
  LITRE("L", "litre", "L", 1, 1, "l", "litres", "liter", "liters", "ltr", "ltrs", "lt"),
  /** Millilitre. */
  MILLILITRE(
      "mL",
      "millilitre",
      "mL",
      1,
      1000,
      "ml",
      "millilitres",
      "milliliter",
      "milliliters",
      "cc",
      "cm³",
      "cm3",
      "cm^3"),
  /** Centilitre. */
  CENTILITRE("cL", "centilitre", "cL", 1, 100, "cl", "centilitres", "centiliter", "centiliters"),
  /** Decilitre. */
  DECILITRE("dL", "decilitre", "dL", 1, 10, "dl", "decilitres", "deciliter", "deciliters"),
  /** Hectolitre. */
  HECTOLITRE("hL", "hectolitre", "hL", 100, 1, "hl", "hectolitres", "hectoliter", "hectoliters"),
  /** Microlitre. */
  MICROLITRE(
      "µL",
      "microlitre",
      "uL",
      1,
      1000000,
      "µl",
      "μL",
      "μl",
      "uL",
      "ul",
      "microlitres",
      "microliter",
      "microliters"),
  /** Cubic metre. */
  CUBIC_METRE(
      "m³",
      "cubic metre",
      "m3",
      1000,
      1,
      "m3",
      "m^3",
      "cubic metres",
      "cubic meter",
      "cubic meters"),
  /** Cubic inch. */
  CUBIC_INCH(
      "in³", "cubic inch", "[cin_i]", 2048383, 125000000, "in3", "in^3", "cu in", "cubic inches"),
  /** Cubic foot. */
  CUBIC_FOOT(
      "ft³", "cubic foot", "[cft_i]", 55306341, 1953125, "ft3", "ft^3", "cu ft", "cubic feet"),
  /** US liquid gallon, 231 in³. */
  US_GALLON("gal (US)", "US gallon", "[gal_us]", 473176473, 125000000, "usg"),
  /** US liquid quart, a quarter of a gallon. */
  US_QUART("qt (US)", "US quart", "[qt_us]", 473176473, 500000000),
  /** US liquid pint, an eighth of a gallon. */
  US_PINT("pt (US)", "US pint", "[pt_us]", 473176473, 1000000000),
  /** US cup, a sixteenth of a gallon. */
  US_CUP("cup (US)", "US cup", "[cup_us]", 473176473, 2000000000),
  /** US gill, a quarter of a US pint. */
  US_GILL("gill (US)", "US gill", "[gil_us]", 473176473L, 4000000000L),
  /** US fluid ounce, 1/128 of a gallon. */
  US_FLUID_OUNCE("fl oz (US)", "US fluid ounce", "[foz_us]", 473176473L, 16000000000L),
  /** US tablespoon, half a fluid ounce. */
  US_TABLESPOON("tbsp (US)", "US tablespoon", "[tbs_us]", 473176473L, 32000000000L),
  /** US teaspoon, a third of a tablespoon. */
  US_TEASPOON("tsp (US)", "US teaspoon", "[tsp_us]", 157725491L, 32000000000L),
  /** Imperial gallon, 4.546 09 L. */
  IMPERIAL_GALLON("gal (imp)", "imperial gallon", "[gal_br]", 454609, 100000),
  /** Imperial quart, a quarter of a gallon. */
  IMPERIAL_QUART("qt (imp)", "imperial quart", "[qt_br]", 454609, 400000),
  /** Imperial pint, an eighth of a gallon. */
  IMPERIAL_PINT("pt (imp)", "imperial pint", "[pt_br]", 454609, 800000),
  /** Imperial gill, a quarter of an imperial pint. */
  IMPERIAL_GILL("gill (imp)", "imperial gill", "[gil_br]", 454609, 3200000),
  /** Imperial fluid ounce, 1/160 of a gallon. */
  IMPERIAL_FLUID_OUNCE("fl oz (imp)", "imperial fluid ounce", "[foz_br]", 454609, 16000000),
  /** Metric tablespoon, 15 mL. */
  METRIC_TABLESPOON("tbsp (metric)", "metric tablespoon", "[tbs_m]", 3, 200),
  /** Metric teaspoon, 5 mL. */
  METRIC_TEASPOON("tsp (metric)", "metric teaspoon", "[tsp_m]", 1, 200),
  /** Metric cup of UCUM, 240 mL. */
  METRIC_CUP("cup (240 mL)", "cup of 240 mL", "[cup_m]", 6, 25),
  /** Metric fluid ounce of UCUM, 30 mL. */
  METRIC_FLUID_OUNCE("fl oz (30 mL)", "fluid ounce of 30 mL", "[foz_m]", 3, 100),
  /** Australian tablespoon, 20 mL (value from memory). */
  AUSTRALIAN_TABLESPOON("tbsp (AU)", "Australian tablespoon", "20.mL", 1, 50),
  /** Australian cup, 250 mL (value from memory). */
  AUSTRALIAN_CUP("cup (AU)", "Australian cup", "250.mL", 1, 4);

  private final UnitDefinition definition;
  private final List<String> spellings;

  VolumeUnit(
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
    return QuantityKind.VOLUME;
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
