package agro.units;

import java.util.Objects;

/**
 * What there is to know of a unit.
 *
 * @param symbol printed symbol, for example {@code "fl oz (US)"}
 * @param words name in words, in the singular, for example {@code "US fluid ounce"}
 * @param ucum UCUM code, or an expression of UCUM codes of the same size
 * @param factor exact size in the base unit of the kind
 */
public record UnitDefinition(String symbol, String words, String ucum, ExactFactor factor) {

  /** Refuses a unit without a name or size. */
  public UnitDefinition {
    Objects.requireNonNull(factor, "factor");
    if (symbol.isBlank() || words.isBlank() || ucum.isBlank()) {
      throw new IllegalArgumentException("a unit needs a symbol, a name and a code");
    }
  }

  @Override
  public String toString() {
    return symbol;
  }
}
