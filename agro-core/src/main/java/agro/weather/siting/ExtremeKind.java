package agro.weather.siting;

/** What the extremes of a day were taken from. */
public enum ExtremeKind {
  /** The lowest and highest of every moment: a minimum-maximum thermometer, or a logger's own. */
  EVERY_MOMENT("extremes of every moment"),
  /** The lowest and highest of single readings. */
  INSTANTS("extremes of single readings"),
  /** The lowest and highest of means over an interval. */
  INTERVAL_MEANS("extremes of means over an interval"),
  /** Nobody wrote it down. */
  NOT_STATED("kind of extremes not stated");

  private final String words;

  ExtremeKind(String words) {
    this.words = words;
  }

  /**
   * The kind in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }
}
