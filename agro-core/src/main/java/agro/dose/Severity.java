package agro.dose;

/** How much a finding matters, from least to most. */
public enum Severity {
  /** Good to know. */
  NOTE("note"),
  /** Not clear or not explained; somebody has to look before the sprayer is filled. */
  WARNING("warning"),
  /** Against the label. */
  ERROR("error");

  private final String words;

  Severity(String words) {
    this.words = words;
  }

  /**
   * The severity in words.
   *
   * @return one lower-case word
   */
  public String words() {
    return words;
  }
}
