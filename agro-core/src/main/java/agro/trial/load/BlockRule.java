package agro.trial.load;

/** Whether a line of yield on load is drawn within blocks or across all plots. */
public enum BlockRule {
  /**
   * Blocks as a factor: one slope, a height of its own for each block. What makes a whole block
   * rich or poor in both yield and pests does not enter the slope.
   */
  WITHIN_BLOCKS("within blocks (blocks as a factor)"),
  /** One line through all plots, as if there were no blocks. */
  ACROSS_PLOTS("across all plots");

  private final String words;

  BlockRule(String words) {
    this.words = words;
  }

  /**
   * The rule in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
