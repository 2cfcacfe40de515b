package agro.dose.tank;

/** What is done with the part of a load that remains after the full ones. */
public enum LastLoad {
  /** Full loads first, then one load of just what is still needed. */
  PART_LOAD("full loads, then a part load of what is still needed"),
  /** The spray is shared out evenly, so that every load gets the same amounts. */
  EQUAL_LOADS("all loads equal"),
  /** The last load is made full like the others; what is not needed is left over. */
  FULL_LOAD("all loads full; the rest of the last one is left over");

  private final String words;

  LastLoad(String words) {
    this.words = words;
  }

  /**
   * The choice in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
