package agro.programme.interval;

/** What is limited, each with the sign by which a printed calendar names it. */
public enum LimitRule {
  /** A label record of the product for the crop. */
  LABELLED_USE("label record of the use", "L"),
  /** Number of applications. */
  NUMBER("number of applications", "N"),
  /** Days between applications. */
  INTERVAL("interval between applications", "I"),
  /** Amount of product or active ingredient. */
  AMOUNT("amount", "A"),
  /** Days or stage before harvest. */
  PRE_HARVEST("pre-harvest interval", "H"),
  /** Hours before entry. */
  RE_ENTRY("re-entry interval", "E"),
  /** Distance to water, people and others. */
  BUFFER("buffer", "D"),
  /** Hours without rain. */
  RAIN_FREE("rain-free time", "R"),
  /** Bloom and bees. */
  BEES("bees", "B"),
  /** Natural enemies. */
  HELPERS("natural enemies", "S"),
  /** Mode-of-action group. */
  GROUP("mode-of-action group", "G");

  private final String words;
  private final String mark;

  LimitRule(String words, String mark) {
    this.words = words;
    this.mark = mark;
  }

  /**
   * The rule in words.
   *
   * @return lower-case words
   */
  public String words() {
    return words;
  }

  /**
   * The sign in a printed calendar.
   *
   * @return one capital letter
   */
  public String mark() {
    return mark;
  }
}
