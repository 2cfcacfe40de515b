package agro.programme.bulletin;

/** For whom a bulletin is written. */
public enum ReadingLevel {
  /** One sheet for the board: what stands out, what to do, the cautions. */
  BOARD("board"),
  /** Everything, for the adviser. */
  ADVISER("adviser");

  private final String word;

  ReadingLevel(String word) {
    this.word = word;
  }

  /**
   * The level in names of files.
   *
   * @return a lower-case word
   */
  public String word() {
    return word;
  }
}
