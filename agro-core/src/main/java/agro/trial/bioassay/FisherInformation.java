package agro.trial.bioassay;

/**
 * Which information the standard errors rest on. For the logit without natural mortality the two
 * are the same; published tables use either.
 */
public enum FisherInformation {
  /** Information to be expected at the fitted curve, as Fisher scoring uses it. */
  EXPECTED("expected"),
  /** Curvature of the log-likelihood of these very data. */
  OBSERVED("observed");

  private final String words;

  FisherInformation(String words) {
    this.words = words;
  }

  /**
   * The kind in words.
   *
   * @return one word
   */
  public String words() {
    return words;
  }
}
