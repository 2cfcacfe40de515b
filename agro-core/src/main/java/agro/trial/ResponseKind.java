package agro.trial;

/** What kind of number a variable of a trial is, and so which values can be. */
public enum ResponseKind {
  /** Animals or things counted: whole numbers of at least 0. */
  COUNT("count"),
  /** Affected ones among a number looked at: whole numbers from 0 to that number. */
  COUNT_OUT_OF("count out of n"),
  /** Per cent from 0 to 100. */
  PERCENTAGE("percentage"),
  /** A measured amount of at least 0. */
  MEASURE("measure"),
  /** A score on a scale with a lowest and a highest grade; grades are ordered, not measured. */
  SCORE("score"),
  /** A number that may be negative. */
  SIGNED("signed number");

  private final String words;

  ResponseKind(String words) {
    this.words = words;
  }

  /**
   * The kind in words.
   *
   * @return one noun
   */
  public String words() {
    return words;
  }
}
