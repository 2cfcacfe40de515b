package agro.notebook.kernel;

import java.util.BitSet;

/** What can be said of Java code without a compiler: where comments and literals end. */
final class JavaText {

  private JavaText() {}

  /**
   * Skips spaces and comments.
   *
   * @param code Java code
   * @param from where to begin, at a token's border
   * @return where the next token begins, or the length of the code
   */
  static int skipBlank(String code, int from) {
    var at = from;
    while (at < code.length()) {
      if (Character.isWhitespace(code.charAt(at))) {
        at++;
      } else if (isComment(code, at)) {
        at = endOfToken(code, at);
      } else {
        break;
      }
    }
    return at;
  }

  /**
   * The code without the spaces and comments at its end.
   *
   * @param code Java code that begins at a token's border
   * @return the code up to its last token
   */
  static String withoutBlankEnd(String code) {
    var end = 0;
    for (var at = skipBlank(code, 0); at < code.length(); at = skipBlank(code, end)) {
      end = endOfToken(code, at);
    }
    return code.substring(0, end);
  }

  /**
   * Which positions lie in comments and literals.
   *
   * @param code Java code that begins at a token's border
   * @return the positions that are not code
   */
  static BitSet textIn(String code) {
    var text = new BitSet(code.length());
    for (var at = 0; at < code.length(); ) {
      var end = endOfToken(code, at);
      text.set(at, end, end > at + 1);
      at = end;
    }
    return text;
  }

  private static boolean isComment(String code, int at) {
    return code.startsWith("//", at) || code.startsWith("/*", at);
  }

  /**
   * The end of a comment, a literal, or else of the one character that stands at a position.
   *
   * @param code Java code
   * @param at the beginning of a token
   * @return the position behind it
   */
  static int endOfToken(String code, int at) {
    if (code.startsWith("//", at)) {
      return endOf(code, "\n", at);
    }
    if (code.startsWith("/*", at)) {
      return endOf(code, "*/", at + 2);
    }
    if (code.startsWith("\"\"\"", at)) {
      return endOfLiteral(code, "\"\"\"", at + 3);
    }
    var first = code.charAt(at);
    return first == '"' || first == '\''
        ? endOfLiteral(code, String.valueOf(first), at + 1)
        : at + 1;
  }

  private static int endOf(String code, String mark, int from) {
    var found = code.indexOf(mark, Math.min(from, code.length()));
    return found < 0 ? code.length() : found + mark.length();
  }

  private static int endOfLiteral(String code, String quote, int from) {
    var at = from;
    while (at < code.length() && !code.startsWith(quote, at)) {
      at += code.charAt(at) == '\\' ? 2 : 1;
    }
    return Math.min(at + quote.length(), code.length());
  }

  /**
   * The line of a position.
   *
   * @param code Java code
   * @param at a position in it
   * @return the line, counted from 1
   */
  static int lineOf(String code, int at) {
    return 1
        + (int)
            code.substring(0, Math.min(at, code.length())).chars().filter(c -> c == '\n').count();
  }
}
