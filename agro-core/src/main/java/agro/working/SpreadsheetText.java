package agro.working;

import java.util.regex.Pattern;

/** Text made safe for files that a spreadsheet opens. */
public final class SpreadsheetText {

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?[0-9]+([.,][0-9]+)?([eE][+-]?[0-9]+)?");

  /** First characters that make a spreadsheet compute a cell, the full-width forms included. */
  private static final String FORMULA_STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

  private SpreadsheetText() {}

  /**
   * Puts an apostrophe before text that a spreadsheet would take for a formula, that is text whose
   * first character is one of {@code = + - @}, a tab or a line break. Text that is a number, such
   * as {@code -1.5}, stays as it is.
   *
   * @param text text of one cell
   * @return the text, unchanged or with a leading apostrophe
   */
  public static String harmless(String text) {
    boolean formula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
    return formula && !NUMBER.matcher(text).matches() ? "'" + text : text;
  }
}
