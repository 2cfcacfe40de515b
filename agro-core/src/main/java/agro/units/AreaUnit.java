package agro.units;

import java.util.List;

/** Units of area. */
public enum AreaUnit implements Unit<Area> {
  /** Square metre. */
  SQUARE_METRE(
      "m²",
      "square metre",
      "m2",
      1,
      1,
      "m2",
      "m^2",
      "sqm",
      "sq m",
      "sq.m",
      "square metres",
      "square meter",
      "square meters"),
  /** Are, 100 m². */
  ARE("are", "are", "ar", 100, 1, "ares"),
  /** Hectare, 10 000 m². */
  HECTARE("ha", "hectare", "har", 10000, 1, "hectares", "hectar"),
  /** Square kilometre. */
  SQUARE_KILOMETRE(
      "km²",
      "square kilometre",
      "km2",
      1000000,
      1,
      "km2",
      "km^2",
      "sq km",
      "square kilometres",
      "square kilometer",
      "square kilometers"),
  /** Square centimetre. */
  SQUARE_CENTIMETRE(
      "cm²",
      "square centimetre",
      "cm2",
      1,
      10000,
      "cm2",
      "cm^2",
      "sq cm",
      "square centimetres",
      "square centimeter",
      "square centimeters"),
  /** Square inch. */
  SQUARE_INCH(
      "in²", "square inch", "[sin_i]", 16129, 25000000, "in2", "in^2", "sq in", "square inches"),
  /** Square foot. */
  SQUARE_FOOT(
      "ft²",
      "square foot",
      "[sft_i]",
      145161,
      1562500,
      "ft2",
      "ft^2",
      "sq ft",
      "sq feet",
      "sqft",
      "sft",
      "square feet"),
  /** Square yard. */
  SQUARE_YARD(
      "yd²",
      "square yard",
      "[syd_i]",
      1306449,
      1562500,
      "yd2",
      "yd^2",
      "sq yd",
      "sqyd",
      "sq yds",
      "square yards"),
  /** Square mile, 640 acres. */
  SQUARE_MILE(
      "mi²",
      "square mile",
      "[mi_i]2",
      40468564224L,
      15625L,
      "mi2",
      "mi^2",
      "sq mi",
      "square miles"),
  /** International acre, 43 560 ft²; the acre meant by {@code ac}. */
  ACRE(
      "ac",
      "acre",
      "43560.[sft_i]",
      316160658,
      78125,
      "acres",
      "acre (international)",
      "ac (international)"),
  /**
   * US survey acre, larger by four parts in a million; out of use for new work since the end of
   * 2022.
   */
  US_SURVEY_ACRE(
      "ac (US survey)",
      "US survey acre",
      "[acr_us]",
      62726400000L,
      15499969L,
      "acre (US survey)",
      "US survey acres"),
  /** British acre before 1959, on a foot of 12 inches of 2.539998 cm. */
  OLD_BRITISH_ACRE(
      "ac (British before 1959)",
      "old British acre",
      "[acr_br]",
      15808008005469801L,
      3906250000000L);

  private final UnitDefinition definition;
  private final List<String> spellings;

  AreaUnit(
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
    return QuantityKind.AREA;
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
