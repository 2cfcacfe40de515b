package agro.programme.rotation;

/** Where the days of a window come from. */
public enum WindowBasis {
  /** The district has set them. */
  DISTRICT("set by the district"),
  /** One generation of the pest as the forecast has it. */
  FORECAST("one generation by the forecast"),
  /** A length of a generation that the user stated. */
  STATED_LENGTH("one generation of stated length"),
  /** Thirty days, because the length of a generation is not known. */
  THIRTY_DAYS("thirty days, because the length of a generation is not known");

  private final String words;

  WindowBasis(String words) {
    this.words = words;
  }

  /**
   * The basis in words.
   *
   * @return lower-case words
   */
  public String words() {
    return words;
  }
}
