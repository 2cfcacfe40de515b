package agro.development.rate;

/**
 * A parameter of a rate model.
 *
 * @param symbol the symbol in the formula, in plain letters, for example {@code "T0"}
 * @param meaning what it stands for, as a phrase
 * @param unit its unit as printed, empty for a plain number
 */
public record RateParameter(String symbol, String meaning, String unit) {

  /** Refuses a parameter without symbol or meaning. */
  public RateParameter {
    if (symbol.isBlank() || meaning.isBlank()) {
      throw new IllegalArgumentException("a parameter needs a symbol and a meaning");
    }
  }

  static RateParameter of(String symbol, String meaning, String unit) {
    return new RateParameter(symbol, meaning, unit);
  }

  @Override
  public String toString() {
    return symbol + ": " + meaning + (unit.isEmpty() ? "" : " (" + unit + ")");
  }
}
