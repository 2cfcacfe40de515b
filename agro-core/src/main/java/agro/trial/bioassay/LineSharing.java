package agro.trial.bioassay;

/** What the lines of several series have in common. */
public enum LineSharing {
  /** Intercept and slope: one line for all. */
  ONE_LINE("one line for all"),
  /** The slope: parallel lines. */
  PARALLEL("parallel lines"),
  /** Nothing: a line for each. */
  SEPARATE("separate lines");

  private final String words;

  LineSharing(String words) {
    this.words = words;
  }

  /**
   * The sharing in words.
   *
   * @return a phrase for tables
   */
  public String words() {
    return words;
  }
}
