package agro.trial.bioassay;

/** How the limits of a lethal dose are found. */
public enum LimitMethod {
  /** Fieller's theorem: doses that the line does not refute; may be unbounded. */
  FIELLER("Fieller"),
  /** Estimate plus and minus a multiple of its standard error by the delta method. */
  DELTA("delta method"),
  /** Doses at which the best curve through them fits not much worse than the best of all. */
  PROFILE("profile likelihood");

  private final String words;

  LimitMethod(String words) {
    this.words = words;
  }

  /**
   * The method in words.
   *
   * @return name as it is printed
   */
  public String words() {
    return words;
  }
}
