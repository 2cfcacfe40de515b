package agro.trial.series;

/** How much the plots of a site count in the analysis over fixed sites. */
public enum SiteWeights {
  /** Every plot counts the same: right where the error variances of the sites are alike. */
  EQUAL("every plot counts the same"),
  /** A plot counts by one over the error variance of its site. */
  BY_ERROR_VARIANCE("plots count by one over the error variance of their site");

  private final String words;

  SiteWeights(String words) {
    this.words = words;
  }

  /**
   * The rule in words.
   *
   * @return a clause
   */
  public String words() {
    return words;
  }
}
