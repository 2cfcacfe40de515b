package agro.generation;

/**
 * Why a date does not come this season. Each outcome of a forecast has one cause: the first that
 * applies in the order of these constants.
 */
public enum SeasonEnd {
  /** The sum of degree-days is not reached by the last day of the season. */
  WARMTH("warmth"),
  /** The parents lay their eggs after the days have become too short for another generation. */
  DAY_LENGTH("day length"),
  /** A cold day has ended the season before. */
  COLD("cold"),
  /** The date comes after the last day on which it matters, such as the end of harvest. */
  LAST_USEFUL_DAY("last useful day");

  private final String words;

  SeasonEnd(String words) {
    this.words = words;
  }

  /**
   * The cause in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }
}
