package agro.dose;

/**
 * As what an active substance is stated. Acid equivalent and salt of one substance differ by a
 * third and more, so that neither is taken for the other.
 */
public enum ActiveBasis {
  /** The active ingredient as the label names it. */
  ACTIVE_INGREDIENT("ai", "active ingredient"),
  /** The acid from which a salt or ester is made. */
  ACID_EQUIVALENT("ae", "acid equivalent"),
  /** The salt or ester itself. */
  SALT("salt", "salt or ester");

  private final String symbol;
  private final String words;

  ActiveBasis(String symbol, String words) {
    this.symbol = symbol;
    this.words = words;
  }

  /**
   * The sign that is written behind a unit.
   *
   * @return {@code "ai"}, {@code "ae"} or {@code "salt"}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * The basis in words.
   *
   * @return for example {@code "acid equivalent"}
   */
  public String words() {
    return words;
  }
}
