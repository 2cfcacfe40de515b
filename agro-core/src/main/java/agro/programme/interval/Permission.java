package agro.programme.interval;

/** What the rules say to a deed, from the weakest word to the strongest. */
public enum Permission {
  /** Every rule that was asked for is recorded and kept. */
  ALLOWED("allowed"),
  /** A rule is not recorded or cannot be counted; that is never taken for leave. */
  NOT_RECORDED("not recorded: look at the label"),
  /** A rule that is recorded would be broken. */
  REFUSED("refused");

  private final String words;

  Permission(String words) {
    this.words = words;
  }

  /**
   * The permission in words.
   *
   * @return lower-case words
   */
  public String words() {
    return words;
  }

  /**
   * The stronger of two.
   *
   * @param other another permission
   * @return refused before not recorded before allowed
   */
  public Permission and(Permission other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
