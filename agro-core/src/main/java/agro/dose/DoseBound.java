package agro.dose;

/** Which side of a dose a label limits. */
public enum DoseBound {
  /** Never more than this. */
  MAXIMUM("maximum"),
  /** Never less than this. */
  MINIMUM("minimum");

  private final String words;

  DoseBound(String words) {
    this.words = words;
  }

  /**
   * The bound in words.
   *
   * @return {@code "maximum"} or {@code "minimum"}
   */
  public String words() {
    return words;
  }
}
