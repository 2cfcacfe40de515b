package agro.notebook.insight;

import agro.notebook.insight.JavaTokens.Kind;
import agro.notebook.insight.JavaTokens.Token;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * The call whose parentheses the cursor stands in, or that ends right before the cursor.
 *
 * @param name the name of what is called
 * @param arguments how many arguments have been begun
 */
record CallAtCursor(Token name, int arguments) {

  private record Open(Optional<Token> name, int commas, int start) {}

  /**
   * Looks for the innermost call.
   *
   * @param code the code of a cell
   * @param cursor a position in it
   * @return empty when the cursor stands in no call
   */
  static Optional<CallAtCursor> at(String code, int cursor) {
    Deque<Open> open = new ArrayDeque<>();
    Optional<CallAtCursor> last = Optional.empty();
    Token before = null;
    Token beforeGenerics = null;
    for (var token : JavaTokens.codeIn(code)) {
      if (token.start() >= cursor) {
        break;
      }
      if (token.is(code, "<")) {
        beforeGenerics = before;
      }
      if (token.kind() == Kind.SIGN && "([{".indexOf(code.charAt(token.start())) >= 0) {
        var isCall = token.is(code, "(");
        open.push(
            new Open(
                isCall ? called(code, before, beforeGenerics) : Optional.empty(),
                0,
                token.start()));
      } else if (token.is(code, ",") && !open.isEmpty()) {
        var top = open.pop();
        open.push(new Open(top.name(), top.commas() + 1, top.start()));
      } else if (token.kind() == Kind.SIGN && ")]}".indexOf(code.charAt(token.start())) >= 0) {
        last = open.isEmpty() ? Optional.empty() : call(open.pop(), code, token.start());
      } else if (!token.is(code, ";")) {
        last = token.kind() == Kind.WORD || token.kind() == Kind.SIGN ? Optional.empty() : last;
      }
      before = token;
    }
    for (var one : open) {
      if (one.name().isPresent()) {
        return call(one, code, cursor);
      }
    }
    return last;
  }

  private static Optional<CallAtCursor> call(Open open, String code, int end) {
    var nothingYet = open.commas() == 0 && code.substring(open.start() + 1, end).isBlank();
    return open.name().map(name -> new CallAtCursor(name, nothingYet ? 0 : open.commas() + 1));
  }

  /** The name right before a parenthesis, type arguments left out. */
  private static Optional<Token> called(String code, Token before, Token beforeGenerics) {
    if (before == null) {
      return Optional.empty();
    }
    var name = before.is(code, ">") && beforeGenerics != null ? beforeGenerics : before;
    return name.kind() == Kind.WORD && !JavaWords.isReserved(name.in(code))
        ? Optional.of(name)
        : Optional.empty();
  }
}
