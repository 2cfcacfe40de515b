package agro.programme.rotation;

/** By what proposed programmes are ranked. Of two, the one with the better first criterion wins. */
public enum PlanCriterion {
  /** More windows with an application. */
  WINDOWS_TREATED("windows treated", true),
  /** Fewer sub-groups, unknown modes and other doubts. */
  DOUBTS("doubts", false),
  /** More days of the windows under a residue, where its days are recorded. */
  DAYS_COVERED("days covered", true),
  /** Fewer products of the worst hazard class, then of the next one. */
  HAZARD("hazard", false),
  /** Fewer products on whose label stands a rule for bees. */
  BEE_RULES("products with a rule for bees", false),
  /** Lower cost per hectare. */
  COST("cost per hectare", false),
  /** Shorter waiting times before harvest, summed. */
  HARVEST_WAIT("days of waiting before harvest", false),
  /** Fewer applications. */
  APPLICATIONS("applications", false);

  private final String words;
  private final boolean moreIsBetter;

  PlanCriterion(String words, boolean moreIsBetter) {
    this.words = words;
    this.moreIsBetter = moreIsBetter;
  }

  /**
   * The criterion in words.
   *
   * @return lower-case words
   */
  public String words() {
    return words;
  }

  /**
   * Whether a larger figure is better.
   *
   * @return false if a smaller one is
   */
  public boolean moreIsBetter() {
    return moreIsBetter;
  }
}
