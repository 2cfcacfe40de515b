package agro.trial.series;

/** How the values of one plot on several dates belong together. */
public enum DateCorrelation {
  /** Any two dates of a plot are correlated alike, as in a split plot in time. */
  EQUAL("any two dates of a plot correlated alike"),
  /** The correlation falls with the days between two dates, to the power of their number. */
  FALLING("correlation of dates that falls with the days between them"),
  /** That of the two under which the data are likelier; both have as many parameters. */
  LIKELIER("the likelier of equal and falling correlation");

  private final String words;

  DateCorrelation(String words) {
    this.words = words;
  }

  /**
   * The correlation in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
