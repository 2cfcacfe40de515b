package agro.generation;

/** How much of a flight is over: words for animals, never for chance. */
public enum FlightShare {
  /** The first twentieth of the flight. */
  FIRST(0.05, "first 5 %"),
  /** Half of the flight. */
  HALF(0.5, "half"),
  /** All but the last twentieth of the flight. */
  NEARLY_ALL(0.95, "nearly all (95 %)");

  private final double share;
  private final String words;

  FlightShare(double share, String words) {
    this.share = share;
    this.words = words;
  }

  /**
   * The share as a number.
   *
   * @return above 0 and below 1
   */
  public double share() {
    return share;
  }

  /**
   * The share in words.
   *
   * @return a phrase for print
   */
  public String words() {
    return words;
  }
}
