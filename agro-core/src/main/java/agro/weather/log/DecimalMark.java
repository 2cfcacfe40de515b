package agro.weather.log;

/** The mark between whole numbers and decimals. */
public enum DecimalMark {
  /** A point, as in 12.5. */
  POINT('.'),
  /** A comma, as in 12,5. */
  COMMA(',');

  private final char character;

  DecimalMark(char character) {
    this.character = character;
  }

  /**
   * The mark.
   *
   * @return a point or a comma
   */
  public char character() {
    return character;
  }
}
