package agro.stats.glm;

/** Which information matrix standard errors come from. They are equal for canonical links. */
public enum InformationKind {
  /** Its expectation at the fitted means, as in Fisher's scoring. */
  EXPECTED("expected information"),
  /** The curvature of the log-likelihood of these very data, as in Newton's method. */
  OBSERVED("observed information");

  private final String words;

  InformationKind(String words) {
    this.words = words;
  }

  /**
   * The name in words.
   *
   * @return the name in words
   */
  public String words() {
    return words;
  }
}
