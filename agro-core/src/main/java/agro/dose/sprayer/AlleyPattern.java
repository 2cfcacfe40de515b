package agro.dose.sprayer;

/** How an orchard sprayer passes through the rows, which decides what one pass covers. */
public enum AlleyPattern {
  /** Every alley, spraying to both sides: one pass covers one row distance. */
  EVERY_ALLEY_BOTH_SIDES(1, "every alley, both sides"),
  /** Every alley, to the left side going and to the left coming back: half a row distance each. */
  EACH_SIDE_OF_EACH_ROW(0.5, "along each side of each row, one side spraying"),
  /**
   * Every second alley to both sides, so that a row is sprayed from one side: two row distances.
   */
  EVERY_SECOND_ALLEY(2, "every second alley, both sides"),
  /** One pass above each row, such as a tunnel or an over-row sprayer: one row distance. */
  OVER_THE_ROW(1, "over each row");

  private final double rowsPerPass;
  private final String words;

  AlleyPattern(double rowsPerPass, String words) {
    this.rowsPerPass = rowsPerPass;
    this.words = words;
  }

  /**
   * Row distances that one pass covers.
   *
   * @return 0.5, 1 or 2
   */
  public double rowsPerPass() {
    return rowsPerPass;
  }

  /**
   * The pattern in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
