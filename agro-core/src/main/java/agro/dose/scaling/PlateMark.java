package agro.dose.scaling;

/** Whether a plate is counted. */
public enum PlateMark {
  /** Too few colonies: chance rules the count. */
  TOO_FEW("too few to count"),
  /** Inside the countable range. */
  COUNTABLE("countable"),
  /** Too many colonies: they run together. */
  TOO_MANY("too many to count");

  private final String words;

  PlateMark(String words) {
    this.words = words;
  }

  /**
   * The mark in words.
   *
   * @return a short phrase in lower case
   */
  public String words() {
    return words;
  }
}
