package agro.programme.rotation;

/** A rule that a proposed programme keeps to. Each can leave a window without a product. */
public enum PlanRule {
  /** A crop stands in the field, and the label covers crop and pest. */
  LABELLED_USE("crop and pest are on the label"),
  /** The group of every active ingredient is recorded. */
  GROUP_RECORDED("the group of every active ingredient is recorded"),
  /** Waiting time before harvest and number of applications are recorded. */
  LIMITS_RECORDED("waiting time before harvest and number of applications are recorded"),
  /** No group in two windows in a row. */
  SUCCESSIVE_WINDOWS("no group in two windows in a row"),
  /** One group in at most a share of the crop cycle. */
  SHARE_OF_SEASON("one group in at most a share of the crop cycle"),
  /** Groups of the nursery rest for one generation. */
  NURSERY_BREAK("groups of the nursery rest for one generation in the field"),
  /** Numbers of applications. */
  APPLICATIONS("number of applications"),
  /** Amounts of product and of active ingredient. */
  AMOUNT("amount of product and of active ingredient"),
  /** Days between applications. */
  INTERVAL("days between applications"),
  /** Days before the next picking. */
  PRE_HARVEST("waiting time before harvest"),
  /** Bloom and bees. */
  BEES("bees");

  private final String words;

  PlanRule(String words) {
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
}
