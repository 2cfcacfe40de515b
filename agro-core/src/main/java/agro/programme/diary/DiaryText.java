package agro.programme.diary;

import agro.working.SpreadsheetText;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text of a cell as it stands in the file. A spreadsheet cannot take it for a formula, it is one
 * line long, and it is read back letter by letter.
 */
final class DiaryText {

  private static final Pattern ESCAPE = Pattern.compile("\\\\(\\\\|u[0-9A-F]{4})");

  private DiaryText() {}

  /** A cell with its quotes. */
  static String cell(String text) {
    var written = guarded(escaped(text));
    boolean quotes =
        written.indexOf(',') >= 0 || written.indexOf('"') >= 0 || written.startsWith("#");
    return quotes ? '"' + written.replace("\"", "\"\"") + '"' : written;
  }

  /** The text that a cell stands for. */
  static String read(String cell) {
    var written = isGuarded(cell) ? cell.substring(1) : cell;
    var match = ESCAPE.matcher(written);
    var text = new StringBuilder();
    while (match.find()) {
      var code = match.group(1);
      var letter = code.equals("\\") ? "\\" : Character.toString(Integer.parseInt(code, 1, 5, 16));
      match.appendReplacement(text, Matcher.quoteReplacement(letter));
    }
    return match.appendTail(text).toString();
  }

  /** A text that begins with an apostrophe gets another one, or it would lose its own. */
  private static String guarded(String text) {
    return text.startsWith("'") ? "'" + text : SpreadsheetText.harmless(text);
  }

  private static boolean isGuarded(String cell) {
    return cell.startsWith("'")
        && cell.length() > 1
        && (cell.charAt(1) == '\''
            || !SpreadsheetText.harmless(cell.substring(1)).equals(cell.substring(1)));
  }

  private static String escaped(String text) {
    var written = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      boolean end = i == 0 || i == text.length() - 1;
      boolean blank = Character.isWhitespace(letter) || Character.isSpaceChar(letter);
      if (letter == '\\') {
        written.append("\\\\");
      } else if (isUnsafe(letter) || isLone(text, i) || (end && blank)) {
        written.append('\\').append('u').append(hex(letter));
      } else {
        written.append(letter);
      }
    }
    return written.toString();
  }

  /** Control characters, line breaks of any kind, and the mark that begins some files. */
  private static boolean isUnsafe(char letter) {
    return Character.isISOControl(letter)
        || letter == '\u2028'
        || letter == '\u2029'
        || letter == '\uFEFF';
  }

  /** Half of a letter, which no file can hold. */
  private static boolean isLone(String text, int i) {
    char letter = text.charAt(i);
    boolean begun = i > 0 && Character.isSurrogatePair(text.charAt(i - 1), letter);
    boolean goesOn = i + 1 < text.length() && Character.isSurrogatePair(letter, text.charAt(i + 1));
    return Character.isSurrogate(letter) && !begun && !goesOn;
  }

  private static String hex(char letter) {
    var digits = Integer.toHexString(letter).toUpperCase(Locale.ROOT);
    return "0".repeat(4 - digits.length()) + digits;
  }
}
