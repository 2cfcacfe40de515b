package agro.programme.window;

/** The stage that a treatment hits. */
public enum TargetStage {
  /** Eggs. */
  EGG("eggs"),
  /** Larvae from hatch until they are too large or hidden. */
  YOUNG_LARVA("young larvae"),
  /** Larvae of all ages. */
  LARVA("larvae"),
  /** Adults from their flight on. */
  ADULT("adults");

  private final String words;

  TargetStage(String words) {
    this.words = words;
  }

  /**
   * The animals in words.
   *
   * @return a plural in lower case
   */
  public String words() {
    return words;
  }
}
