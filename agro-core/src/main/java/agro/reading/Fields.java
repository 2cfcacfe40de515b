package agro.reading;

import java.util.List;

/**
 * The cells of one record as split, before they are matched with the heading.
 *
 * @param line number of the line on which the record starts, counted from 1
 * @param cells the trimmed cells
 */
record Fields(long line, List<String> cells) {

  /**
   * Takes white space off both ends of a cell, the no-break spaces of spreadsheets included.
   *
   * @param cell any text
   * @return the text without it
   */
  static String trimmed(String cell) {
    int from = 0;
    int to = cell.length();
    while (from < to && isBlank(cell.charAt(from))) {
      from++;
    }
    while (to > from && isBlank(cell.charAt(to - 1))) {
      to--;
    }
    return cell.substring(from, to);
  }

  private static boolean isBlank(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }

  /**
   * Whether no cell holds anything.
   *
   * @return true for a line of empty cells
   */
  boolean allEmpty() {
    return cells.stream().allMatch(String::isEmpty);
  }

  /**
   * Whether a cell goes over the end of a line, as after a forgotten quotation mark.
   *
   * @return true if a cell holds a line break
   */
  boolean spansLines() {
    return cells.stream().anyMatch(cell -> cell.indexOf('\n') >= 0 || cell.indexOf('\r') >= 0);
  }
}
