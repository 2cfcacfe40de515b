package agro.development;

/** What the degree-days of one day of a series rest on. */
public enum DayBasis {
  /** Everything that the method asks for. */
  COMPLETE("as the method asks"),
  /** Tomorrow's minimum was not known; the method without tomorrow stood in. */
  WITHOUT_TOMORROW("without tomorrow's minimum"),
  /** Tomorrow's minimum was above today's maximum and was held there. */
  TOMORROW_HELD("tomorrow's minimum held at today's maximum"),
  /** Some of the day had no reading, and the rest was taken for the whole of it. */
  PARTLY_READ("from a part of the day"),
  /** The temperatures are missing, and so are the degree-days. */
  MISSING("missing");

  private final String words;

  DayBasis(String words) {
    this.words = words;
  }

  /**
   * The basis in words.
   *
   * @return a short phrase in lower case
   */
  public String words() {
    return words;
  }
}
