package agro.development.rate;

/** What a bootstrap draws. */
public enum Resampling {
  /**
   * Each cabinet keeps its temperature and gets the residual of one drawn at random, enlarged by
   * the root of n/(n - p), since a fitted curve lies closer to its points than the true one. A rate
   * of zero stays zero.
   */
  RESIDUALS("residuals of cabinets, enlarged by the root of n/(n - p)", false),
  /** Each mean is drawn anew about the fitted curve, with its own standard error. */
  PARAMETRIC("means drawn with the standard errors of the cabinets' means", true),
  /** Animals are drawn with replacement within each cabinet. */
  ANIMALS("animals drawn within cabinets", true),
  /**
   * Cabinets are drawn with replacement within each temperature, rescaled by the number m of
   * cabinets there: means move by the root of m/(m - 1) more than drawn; of records m - 1 cabinets
   * are drawn and counted m/(m - 1) times.
   */
  CABINETS("cabinets drawn within temperatures", false);

  private final String words;
  private final boolean withinCabinets;

  Resampling(String words, boolean withinCabinets) {
    this.words = words;
    this.withinCabinets = withinCabinets;
  }

  /**
   * What is drawn, in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }

  /**
   * Whether the scatter between cabinets is missing from the intervals.
   *
   * @return true when animals alone are drawn
   */
  public boolean isWithinCabinets() {
    return withinCabinets;
  }
}
