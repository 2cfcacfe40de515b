package agro.programme;

/** What a label asks for the sake of bees. */
public enum BeeRule {
  /** Not on plants in bloom, crop or weed, at any hour. */
  NOT_IN_BLOOM("not on plants in bloom, weeds included"),
  /** On plants in bloom only outside the hours in which bees fly. */
  NOT_WHILE_BEES_FLY("on plants in bloom only while no bees fly");

  private final String words;

  BeeRule(String words) {
    this.words = words;
  }

  /**
   * The rule in words.
   *
   * @return lower-case words
   */
  public String words() {
    return words;
  }

  @Override
  public String toString() {
    return words;
  }
}
