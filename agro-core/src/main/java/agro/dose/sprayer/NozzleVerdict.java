package agro.dose.sprayer;

/** What a catch test says of one nozzle. */
public enum NozzleVerdict {
  /** Within the tolerance. */
  WITHIN("within tolerance"),
  /** Nothing came out. */
  BLOCKED("blocked"),
  /** Below the tolerance: partly blocked, or another size than the rest. */
  LOW("too low: clean it, check its size"),
  /** Above the tolerance: worn, or another size than the rest. */
  HIGH("too high: worn, or another size");

  private final String words;

  NozzleVerdict(String words) {
    this.words = words;
  }

  /**
   * The verdict in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
