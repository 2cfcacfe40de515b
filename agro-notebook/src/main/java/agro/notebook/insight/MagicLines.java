package agro.notebook.insight;

import java.util.regex.Pattern;

/** Lines that begin with a percent sign: instructions to the notebook among the Java. */
final class MagicLines {

  private static final Pattern WORD = Pattern.compile("^[ \\t]*%{1,2}[\\p{L}_][\\w.-]*");
  private static final Pattern CELL = Pattern.compile("^\\s*%%[\\p{L}_]");

  private MagicLines() {}

  /**
   * Whether the whole cell belongs to an instruction.
   *
   * @param code the code of a cell
   * @return true when it begins with two percent signs
   */
  static boolean takesCell(String code) {
    return CELL.matcher(code).find();
  }

  /**
   * The code with spaces in place of its instructions.
   *
   * @param code the code of a cell
   * @param cursor on the line of the cursor only the instruction's own name is taken out, because
   *     the rest of the line may be Java; -1 for no cursor
   * @return Java of the same length
   */
  static String masked(String code, int cursor) {
    if (code.indexOf('%') < 0) {
      return code;
    }
    var text = new StringBuilder(code);
    var before = ';';
    for (var start = 0; start < code.length(); ) {
      var newline = code.indexOf('\n', start);
      var end = newline < 0 ? code.length() : newline;
      var line = code.substring(start, end);
      var word = WORD.matcher(line);
      if (";}".indexOf(before) >= 0 && word.find()) {
        var atCursor = cursor >= start && cursor <= end;
        blank(text, start, atCursor ? start + word.end() : end);
      } else {
        before = lastCode(line, before);
      }
      start = end + 1;
    }
    return text.toString();
  }

  private static void blank(StringBuilder text, int from, int to) {
    for (var at = from; at < to; at++) {
      text.setCharAt(at, ' ');
    }
  }

  private static char lastCode(String line, char before) {
    var tokens = JavaTokens.codeIn(line);
    return tokens.isEmpty() ? before : line.charAt(tokens.get(tokens.size() - 1).end() - 1);
  }

  /**
   * Where the name of an instruction begins that the cursor stands in.
   *
   * @param code the code of a cell
   * @param cursor a position
   * @return the position of the first percent sign, or -1
   */
  static int nameAt(String code, int cursor) {
    var lineStart = code.lastIndexOf('\n', cursor - 1) + 1;
    var typed = code.substring(lineStart, cursor);
    var name = typed.strip();
    var isName = name.matches("%{1,2}[\\p{L}_]?[\\w.-]*");
    return isName && !typed.endsWith(" ") ? lineStart + typed.indexOf('%') : -1;
  }
}
