package agro.dose.scaling;

import agro.source.Reference;
import agro.units.ExactFactor;
import java.util.List;

/**
 * Units of the total hardness of water. The factor to mg/L as CaCO₃ is the exact ratio of the
 * definitions; where the definition names another substance it holds the molar masses CaO 56.077
 * and CaCO₃ 100.086 g/mol (values from memory).
 */
public enum HardnessUnit {
  /** Milligram per litre as calcium carbonate, also called ppm as CaCO₃. */
  MILLIGRAM_CALCIUM_CARBONATE_PER_LITRE(
      "mg/L CaCO3", ExactFactor.ONE, "mg/L as CaCO3", "mg/l CaCO3", "ppm CaCO3", "ppm as CaCO3"),
  /** Millimole of calcium and magnesium per litre. */
  MILLIMOLE_PER_LITRE("mmol/L", ExactFactor.of(100_086, 1000), "mmol/l"),
  /** German degree, 10 mg CaO per litre. */
  GERMAN_DEGREE("°dH", ExactFactor.of(1_000_860, 56_077), "dH", "°DH", "dGH", "°dGH"),
  /** French degree, 10 mg CaCO₃ per litre. */
  FRENCH_DEGREE("°fH", ExactFactor.of(10, 1), "fH", "°FH"),
  /** English or Clark degree, one grain CaCO₃ per imperial gallon. */
  ENGLISH_DEGREE("°e", ExactFactor.of(6_479_891, 454_609), "°Clark", "°E"),
  /** Grain CaCO₃ per US gallon. */
  GRAIN_PER_US_GALLON("gr/gal (US)", ExactFactor.of(64_798_910_000L, 3_785_411_784L), "gpg (US)");

  private final String symbol;
  private final ExactFactor factor;
  private final List<String> spellings;

  HardnessUnit(String symbol, ExactFactor factor, String... spellings) {
    this.symbol = symbol;
    this.factor = factor;
    this.spellings = List.of(spellings);
  }

  /**
   * The printed symbol.
   *
   * @return for example {@code "°dH"}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * The size in mg/L as CaCO₃.
   *
   * @return an exact ratio
   */
  public ExactFactor factor() {
    return factor;
  }

  /**
   * Where the definitions come from.
   *
   * @return the source with its standing
   */
  public Reference source() {
    return ScalingSources.HARDNESS_DEGREES;
  }

  /** Whether a text is this unit. */
  boolean isWritten(String text) {
    return symbol.equals(text) || spellings.contains(text);
  }

  @Override
  public String toString() {
    return symbol;
  }
}
