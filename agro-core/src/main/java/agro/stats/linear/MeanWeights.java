package agro.stats.linear;

/** How a marginal mean averages over the levels of the other factors. */
public enum MeanWeights {
  /** Every combination of the other factors counts the same. */
  EQUAL("equal weights"),
  /** Combinations of the other factors count as often as they were observed. */
  PROPORTIONAL("weights in proportion to the observations");

  private final String words;

  MeanWeights(String words) {
    this.words = words;
  }

  /**
   * The choice in words, as printed below a table of means.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }
}
