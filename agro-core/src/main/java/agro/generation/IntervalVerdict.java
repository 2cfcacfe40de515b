package agro.generation;

/** What the counts can tell about the interval between flights. */
public enum IntervalVerdict {
  /** Several seasons each show two flights apart; the interval holds for a new season. */
  SEVERAL_SEASONS("estimated from several seasons"),
  /** One season shows two flights apart; nothing is known of the scatter between seasons. */
  THIS_SEASON_ONLY("estimated, but holds for this season only"),
  /** Two different intervals explain the counts about equally well. */
  AMBIGUOUS("ambiguous: another interval explains the counts as well"),
  /** The counts pull the interval to the edge of the range in which it was sought. */
  AT_EDGE("at the edge of the range sought: the range, not the counts, would set it"),
  /** No season shows two flights apart. */
  NOT_IDENTIFIED("not identified: no season shows two flights that stand apart");

  private final String words;

  IntervalVerdict(String words) {
    this.words = words;
  }

  /**
   * The verdict in words.
   *
   * @return a phrase for print
   */
  public String words() {
    return words;
  }

  /**
   * Whether the counts give an interval that may be used.
   *
   * @return true for one or several seasons
   */
  public boolean usable() {
    return this == SEVERAL_SEASONS || this == THIS_SEASON_ONLY;
  }
}
