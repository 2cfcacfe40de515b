package agro.stats.glm;

/** Which function of the coefficients is made as great as can be. */
public enum EstimationMethod {
  /** The likelihood. */
  MAXIMUM_LIKELIHOOD("maximum likelihood"),
  /**
   * The likelihood times the square root of the determinant of the expected information (Jeffreys'
   * prior). Estimates stay finite under separation; for logit and log links this takes away the
   * bias of first order (Firth 1993, Biometrika 80:27-38; Heinze and Schemper 2002, Statistics in
   * Medicine 21:2409-2419; from memory).
   */
  PENALISED_LIKELIHOOD("penalised likelihood (Jeffreys' prior, after Firth)");

  private final String words;

  EstimationMethod(String words) {
    this.words = words;
  }

  /**
   * The name in words.
   *
   * @return the name in words
   */
  public String words() {
    return words;
  }
}
