package agro.trial.layout;

/** How plots are numbered. */
public enum PlotNumbering {
  /** From 1 on, there and back again along the rows, as one walks. */
  SERPENTINE("from 1 on, there and back along the rows"),
  /** From 1 on, each row from the left. */
  ROW_BY_ROW("from 1 on, each row from the left"),
  /** Block 1 from 101 on, block 2 from 201 on, in the order of walking. */
  BLOCK_HUNDREDS("block 1 from 101 on, block 2 from 201 on");

  private final String words;

  PlotNumbering(String words) {
    this.words = words;
  }

  /**
   * The numbering in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
