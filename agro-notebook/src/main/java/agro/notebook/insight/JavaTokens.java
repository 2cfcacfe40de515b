package agro.notebook.insight;

import java.util.ArrayList;
import java.util.List;

/** Java text cut into tokens. Never refuses anything: the text may be unfinished or no Java. */
final class JavaTokens {

  /** What a token is. */
  enum Kind {
    BLANK,
    LINE_COMMENT,
    BLOCK_COMMENT,
    TEXT,
    TEXT_BLOCK,
    CHARACTER,
    NUMBER,
    WORD,
    SIGN
  }

  /**
   * One token.
   *
   * @param kind what it is
   * @param start where it begins
   * @param end where it ends, exclusive
   * @param closed false for a comment or a literal without its end
   */
  record Token(Kind kind, int start, int end, boolean closed) {

    boolean isCode() {
      return kind != Kind.BLANK && !isComment();
    }

    boolean isComment() {
      return kind == Kind.LINE_COMMENT || kind == Kind.BLOCK_COMMENT;
    }

    boolean isLiteralText() {
      return kind == Kind.TEXT || kind == Kind.TEXT_BLOCK || kind == Kind.CHARACTER;
    }

    String in(String code) {
      return code.substring(start, end);
    }

    boolean is(String code, String text) {
      return end - start == text.length() && code.startsWith(text, start);
    }
  }

  private final String code;

  private JavaTokens(String code) {
    this.code = code;
  }

  /**
   * All tokens, spaces and comments among them, without a gap.
   *
   * @param code any text
   * @return the tokens in order
   */
  static List<Token> of(String code) {
    var reader = new JavaTokens(code);
    var tokens = new ArrayList<Token>();
    for (var at = 0; at < code.length(); ) {
      var token = reader.tokenAt(at);
      tokens.add(token);
      at = token.end();
    }
    return tokens;
  }

  /**
   * The tokens that a compiler sees.
   *
   * @param code any text
   * @return the tokens without spaces and comments
   */
  static List<Token> codeIn(String code) {
    return of(code).stream().filter(Token::isCode).toList();
  }

  /**
   * The text with comments and the contents of literals as spaces, of the same length.
   *
   * @param code any text
   * @return text in which every letter is code
   */
  static String masked(String code) {
    var plain = new StringBuilder(code);
    for (var token : of(code)) {
      var inside = token.isLiteralText() ? 1 : 0;
      if (token.isComment() || token.isLiteralText()) {
        for (var at = token.start() + inside; at < token.end() - inside; at++) {
          plain.setCharAt(at, code.charAt(at) == '\n' ? '\n' : ' ');
        }
      }
    }
    return plain.toString();
  }

  private Token tokenAt(int at) {
    var letter = code.codePointAt(at);
    if (Character.isWhitespace(letter)) {
      return new Token(Kind.BLANK, at, endOfBlank(at), true);
    }
    if (code.startsWith("//", at)) {
      var end = code.indexOf('\n', at);
      return new Token(Kind.LINE_COMMENT, at, end < 0 ? code.length() : end, true);
    }
    if (code.startsWith("/*", at)) {
      var end = code.indexOf("*/", at + 2);
      return new Token(Kind.BLOCK_COMMENT, at, end < 0 ? code.length() : end + 2, end >= 0);
    }
    if (code.startsWith("\"\"\"", at)) {
      return literal(Kind.TEXT_BLOCK, at, "\"\"\"", true);
    }
    if (letter == '"') {
      return literal(Kind.TEXT, at, "\"", false);
    }
    if (letter == '\'') {
      return literal(Kind.CHARACTER, at, "'", false);
    }
    if (isDigit(at) || (letter == '.' && isDigit(at + 1))) {
      return new Token(Kind.NUMBER, at, endOfNumber(at), true);
    }
    if (Character.isJavaIdentifierStart(letter)) {
      return new Token(Kind.WORD, at, endOfWord(code, at), true);
    }
    return new Token(Kind.SIGN, at, at + Character.charCount(letter), true);
  }

  private int endOfBlank(int from) {
    var at = from;
    while (at < code.length() && Character.isWhitespace(code.codePointAt(at))) {
      at += Character.charCount(code.codePointAt(at));
    }
    return at;
  }

  private Token literal(Kind kind, int start, String quote, boolean manyLines) {
    var at = start + quote.length();
    while (at < code.length() && !code.startsWith(quote, at)) {
      if (code.charAt(at) == '\n' && !manyLines) {
        return new Token(kind, start, at, false);
      }
      at +=
          code.charAt(at) == '\\' && at + 1 < code.length() && code.charAt(at + 1) != '\n' ? 2 : 1;
    }
    var end = Math.min(at, code.length());
    return end < code.length()
        ? new Token(kind, start, end + quote.length(), true)
        : new Token(kind, start, end, false);
  }

  private boolean isDigit(int at) {
    return at < code.length() && code.charAt(at) >= '0' && code.charAt(at) <= '9';
  }

  private int endOfNumber(int from) {
    var at = from;
    while (at < code.length()) {
      var letter = code.charAt(at);
      var exponentSign =
          (letter == '+' || letter == '-')
              && "eEpP".indexOf(code.charAt(at - 1)) >= 0
              && at > from
              && !code.startsWith("0x", from);
      var dot = letter == '.' && (at + 1 == code.length() || !isNameStart(at + 1));
      if (!Character.isLetterOrDigit(letter) && letter != '_' && !dot && !exponentSign) {
        break;
      }
      at++;
    }
    return at;
  }

  private boolean isNameStart(int at) {
    var letter = code.charAt(at);
    return letter == '.'
        || (Character.isJavaIdentifierStart(letter) && "dDfFeE".indexOf(letter) < 0);
  }

  /**
   * Where a word ends.
   *
   * @param code any text
   * @param from a position in or at the start of a word
   * @return the position behind its last letter
   */
  static int endOfWord(String code, int from) {
    var at = from;
    while (at < code.length() && Character.isJavaIdentifierPart(code.codePointAt(at))) {
      at += Character.charCount(code.codePointAt(at));
    }
    return at;
  }

  /**
   * Where a word begins.
   *
   * @param code any text
   * @param from a position in or at the end of a word
   * @return the position of its first letter
   */
  static int startOfWord(String code, int from) {
    var at = from;
    while (at > 0 && Character.isJavaIdentifierPart(code.codePointBefore(at))) {
      at -= Character.charCount(code.codePointBefore(at));
    }
    return at;
  }
}
