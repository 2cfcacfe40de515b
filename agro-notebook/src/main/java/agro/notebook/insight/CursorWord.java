package agro.notebook.insight;

import agro.notebook.insight.JavaTokens.Kind;
import agro.notebook.insight.JavaTokens.Token;
import java.util.List;

/**
 * The word at the cursor and what stands before it.
 *
 * @param from where the word begins
 * @param to where it ends
 * @param typed the part of it before the cursor
 * @param before the tokens before the word, comments and spaces left out
 * @param inText whether the cursor stands in a comment, a literal or a number, where no name can
 */
record CursorWord(int from, int to, String typed, List<Token> before, boolean inText) {

  /** Makes the list immutable. */
  CursorWord {
    before = List.copyOf(before);
  }

  /**
   * Looks at a cell.
   *
   * @param code the code
   * @param cursor a position in it
   * @return the word, of no letters when there is none
   */
  static CursorWord at(String code, int cursor) {
    var tokens = JavaTokens.of(code);
    var from = cursor;
    var to = cursor;
    var inText = false;
    for (var token : tokens) {
      var inside = token.start() < cursor && cursor < token.end();
      var touches = token.start() < cursor && cursor <= token.end();
      if (token.kind() == Kind.WORD && touches) {
        from = token.start();
        to = token.end();
      } else if (token.kind() == Kind.NUMBER && touches) {
        inText = true;
      } else if (token.isComment() || token.isLiteralText()) {
        var open = !token.closed() || token.kind() == Kind.LINE_COMMENT;
        inText |= inside || (touches && open);
      }
    }
    var start = from;
    var before = tokens.stream().filter(Token::isCode).filter(one -> one.end() <= start).toList();
    return new CursorWord(from, to, code.substring(from, cursor), before, inText);
  }

  /**
   * A cursor that stands in the code and not within a letter of two units.
   *
   * @param code the code
   * @param cursor any number
   * @return the nearest position that is one
   */
  static int whole(String code, int cursor) {
    var at = Math.max(0, Math.min(cursor, code.length()));
    var splits =
        at > 0
            && at < code.length()
            && Character.isSurrogatePair(code.charAt(at - 1), code.charAt(at));
    return splits ? at - 1 : at;
  }

  /**
   * Whether the tokens right before the word are these.
   *
   * @param code the code
   * @param texts the tokens, in order
   * @return true when they are
   */
  boolean follows(String code, String... texts) {
    var first = before.size() - texts.length;
    for (var index = 0; index < texts.length; index++) {
      if (first < 0 || !before.get(first + index).is(code, texts[index])) {
        return false;
      }
    }
    return true;
  }
}
