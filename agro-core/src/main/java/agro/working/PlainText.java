package agro.working;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Widths, padding and wrapping of plain text. */
final class PlainText {

  /** Columns that printed text fills at most, where its words allow. */
  static final int LINE_WIDTH = 100;

  private static final Pattern SPACES = Pattern.compile("\\s+");
  private static final Pattern CONTROL = Pattern.compile("[\\x00-\\x1F\\x7F-\\x9F]");

  private PlainText() {}

  /**
   * Text with every run of white space as one space and none at the ends. Other control characters,
   * which could steer a terminal, become the replacement character U+FFFD.
   *
   * @param text any text
   * @return the text on one line
   */
  static String oneLine(String text) {
    if (isOneLine(text)) {
      return text;
    }
    var spaced = SPACES.matcher(text.strip()).replaceAll(" ");
    return CONTROL.matcher(spaced).replaceAll("\uFFFD");
  }

  /** Most texts are; to see it costs little beside two searches. */
  private static boolean isOneLine(String text) {
    boolean afterSpace = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean isEdge = i == 0 || i == text.length() - 1;
      if (c < ' '
          || (c >= 0x7F && c <= 0x9F)
          || (c == ' ' && afterSpace)
          || (isEdge && Character.isWhitespace(c))) {
        return false;
      }
      afterSpace = c == ' ';
    }
    return true;
  }

  /**
   * The columns that text takes in a fixed-width font: its code points without combining and
   * invisible ones.
   *
   * @param text text on one line
   * @return number of columns
   */
  static int width(String text) {
    return (int) text.codePoints().filter(PlainText::takesColumn).count();
  }

  private static boolean takesColumn(int codePoint) {
    int type = Character.getType(codePoint);
    return type != Character.NON_SPACING_MARK
        && type != Character.ENCLOSING_MARK
        && type != Character.FORMAT;
  }

  /**
   * Text filled with spaces on the right.
   *
   * @param text text on one line
   * @param width columns wanted
   * @return the text, longer if it is wider already
   */
  static String padRight(String text, int width) {
    return text + " ".repeat(Math.max(0, width - width(text)));
  }

  /**
   * Text filled with spaces on the left.
   *
   * @param text text on one line
   * @param width columns wanted
   * @return the text, longer if it is wider already
   */
  static String padLeft(String text, int width) {
    return " ".repeat(Math.max(0, width - width(text))) + text;
  }

  /**
   * The width of the widest word.
   *
   * @param text any text
   * @return columns below which the text cannot be wrapped
   */
  static int widestWord(String text) {
    int widest = 0;
    for (var word : oneLine(text).split(" ", -1)) {
      widest = Math.max(widest, width(word));
    }
    return widest;
  }

  /**
   * Text broken between words; a word wider than a line keeps a line of its own.
   *
   * @param text any text
   * @param width columns of a line
   * @return at least one line
   */
  static List<String> wrap(String text, int width) {
    var lines = new ArrayList<String>();
    var line = new StringBuilder();
    for (var word : oneLine(text).split(" ", -1)) {
      if (!line.isEmpty() && width(line.toString()) + 1 + width(word) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /**
   * A wrapped paragraph whose first line starts with a lead and whose further lines are indented as
   * far.
   *
   * @param lead first characters, such as {@code "- "}
   * @param text any text
   * @return the paragraph without a line break at its end
   */
  static String hanging(String lead, String text) {
    int indent = width(lead);
    var lines = wrap(text, Math.max(LINE_WIDTH - indent, 1));
    return lead + String.join("\n" + " ".repeat(indent), lines);
  }
}
