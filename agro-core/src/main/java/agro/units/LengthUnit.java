package agro.units;

import java.util.List;

/** Units of length. */
public enum LengthUnit implements Unit<Length> {
  /** Metre. */
  METRE("m", "metre", "m", 1, 1, "metres", "meter", "meters"),
  /** Millimetre. */
  MILLIMETRE("mm", "millimetre", "mm", 1, 1000, "millimetres", "millimeter", "millimeters"),
  /** Centimetre. */
  CENTIMETRE("cm", "centimetre", "cm", 1, 100, "centimetres", "centimeter", "centimeters"),
  /** Kilometre. */
  KILOMETRE("km", "kilometre", "km", 1000, 1, "kilometres", "kilometer", "kilometers"),
  /** Inch, 0.0254 m. */
  INCH("in", "inch", "[in_i]", 127, 5000, "inches"),
  /** International foot, 0.3048 m. */
  FOOT("ft", "foot", "[ft_i]", 381, 1250, "feet"),
  /** International yard, 0.9144 m. */
  YARD("yd", "yard", "[yd_i]", 1143, 1250, "yards", "yds"),
  /** International mile, 5280 ft. */
  MILE("mi", "mile", "[mi_i]", 201168, 125, "miles"),
  /** US survey foot, 1200/3937 m; out of use for new work since the end of 2022. */
  US_SURVEY_FOOT("ft (US survey)", "US survey foot", "[ft_us]", 1200, 3937);

  private final UnitDefinition definition;
  private final List<String> spellings;

  LengthUnit(
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
    return QuantityKind.LENGTH;
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
