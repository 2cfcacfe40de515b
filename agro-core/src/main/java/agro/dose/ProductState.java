package agro.dose;

/** Whether a product is measured as a volume or weighed. */
public enum ProductState {
  /** Measured as a volume. */
  LIQUID("a liquid, measured as a volume"),
  /** Weighed. */
  SOLID("a solid, weighed");

  private final String words;

  ProductState(String words) {
    this.words = words;
  }

  /**
   * The state in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
