package agro.trial.load;

/** What is done with a plot that was not counted on a day on which others were. */
public enum MissingDates {
  /**
   * The curve of the plot goes from the count before to the count after; a plot without the first
   * or the last count is left out, since its time would be shorter than that of the others.
   */
  BRIDGE("a missing count is bridged from the one before to the one after"),
  /** The plot is left out. */
  LEAVE_OUT("a plot with a missing count is left out"),
  /** The trial is refused. */
  REFUSE("a missing count is refused");

  private final String words;

  MissingDates(String words) {
    this.words = words;
  }

  /**
   * The rule in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
