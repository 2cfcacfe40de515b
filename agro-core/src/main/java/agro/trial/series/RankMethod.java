package agro.trial.series;

/** Rank tests of scores, by the layout. */
public enum RankMethod {
  /** Ranks within complete blocks. */
  FRIEDMAN("Friedman's test within blocks"),
  /** Ranks within blocks with missing plots. */
  SKILLINGS_MACK("Skillings and Mack's test within blocks with missing plots"),
  /** Ranks over all plots of a trial without blocks. */
  KRUSKAL_WALLIS("Kruskal and Wallis's test without blocks");

  private final String words;

  RankMethod(String words) {
    this.words = words;
  }

  /**
   * The test in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
