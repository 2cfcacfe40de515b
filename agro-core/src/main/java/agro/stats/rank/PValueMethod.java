package agro.stats.rank;

/** Where the chance of a rank test comes from. */
public enum PValueMethod {
  /** All arrangements of the ranks, ties included, are counted. */
  EXACT("exact"),
  /** The chi-squared distribution, which holds for many values. */
  CHI_SQUARED("chi-squared approximation"),
  /** The F distribution, which holds for many values. */
  F_DISTRIBUTION("F approximation");

  private final String words;

  PValueMethod(String words) {
    this.words = words;
  }

  /**
   * The method in words.
   *
   * @return for print beside the chance
   */
  public String words() {
    return words;
  }
}
