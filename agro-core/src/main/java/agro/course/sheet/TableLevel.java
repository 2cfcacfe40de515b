package agro.course.sheet;

/** Levels of significance for which classical tables print values. */
public enum TableLevel {
  /** 10 %. */
  TEN_PERCENT(0.1, "10 %"),
  /** 5 %. */
  FIVE_PERCENT(0.05, "5 %"),
  /** 1 %. */
  ONE_PERCENT(0.01, "1 %"),
  /** 0.1 %. */
  ONE_PER_THOUSAND(0.001, "0.1 %");

  private final double chance;
  private final String words;

  TableLevel(double chance, String words) {
    this.chance = chance;
    this.words = words;
  }

  /**
   * The level as a chance.
   *
   * @return 0 to 1
   */
  public double chance() {
    return chance;
  }

  /**
   * The level in print, with a decimal point.
   *
   * @return for example {@code "5 %"}
   */
  public String words() {
    return words;
  }
}
