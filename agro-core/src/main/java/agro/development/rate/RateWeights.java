package agro.development.rate;

/** How much each rate counts in a least-squares fit. */
public enum RateWeights {
  /** All rates count alike; the usual choice of published fits. */
  EQUAL("equal weights"),
  /**
   * Each counts by one over its square, as when all scatter by the same per cent. A rate of zero
   * counts like the smallest rate above it.
   */
  CONSTANT_VARIATION("weights 1/r², for scatter of the same per cent everywhere"),
  /**
   * Each counts by one over the square of its standard error, from the spread between animals and
   * their number. Where that is not known, as for a rate of zero, it counts like the least exact
   * one.
   */
  STANDARD_ERRORS("weights 1/SE², from the spread between animals");

  private final String words;

  RateWeights(String words) {
    this.words = words;
  }

  /**
   * The weights in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
