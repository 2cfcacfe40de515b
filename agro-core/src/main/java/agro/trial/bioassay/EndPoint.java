package agro.trial.bioassay;

/**
 * Which animals count as responding. The choice moves the lethal dose and is therefore always asked
 * for.
 */
public enum EndPoint {
  /** Dead animals only; moribund ones count as survivors. */
  DEAD("dead; moribund animals count as survivors"),
  /** Dead and moribund animals. */
  DEAD_OR_MORIBUND("dead or moribund"),
  /** The file holds one number of responding animals, and what it counts is written elsewhere. */
  AS_COUNTED("as counted in the source, which does not say how moribund animals were taken");

  private final String words;

  EndPoint(String words) {
    this.words = words;
  }

  /**
   * The end point in words, as it is printed with every result.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
