package agro.sampling.sequential;

/** What a plan says of a field. */
public enum FieldClass {
  /** Below the threshold. */
  LOW("low: below the threshold"),
  /** Above the threshold. */
  HIGH("high: above the threshold"),
  /** Sampling has ended without a decision. */
  UNDECIDED("undecided: too close to the threshold for this sample"),
  /** Sampling goes on. */
  GO_ON("go on: not decided yet");

  private final String words;

  FieldClass(String words) {
    this.words = words;
  }

  /**
   * The class in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
