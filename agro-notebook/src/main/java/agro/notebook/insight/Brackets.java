package agro.notebook.insight;

import agro.notebook.insight.JavaTokens.Kind;
import agro.notebook.insight.JavaTokens.Token;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * The brackets of a piece of Java.
 *
 * @param open those without an end, outermost first
 * @param stray the first closing one without a beginning, or one that closes another kind
 */
record Brackets(List<Token> open, Optional<Token> stray) {

  /** Makes the list immutable. */
  Brackets {
    open = List.copyOf(open);
  }

  static Brackets in(String code) {
    Deque<Token> open = new ArrayDeque<>();
    Optional<Token> stray = Optional.empty();
    for (var token : JavaTokens.codeIn(code)) {
      if (token.kind() != Kind.SIGN) {
        continue;
      }
      var sign = code.charAt(token.start());
      if ("([{".indexOf(sign) >= 0) {
        open.push(token);
      } else if (")]}".indexOf(sign) >= 0) {
        if (!open.isEmpty() && closes(code.charAt(open.peek().start()), sign)) {
          open.pop();
        } else if (stray.isEmpty()) {
          stray = Optional.of(token);
        }
      }
    }
    var outermostFirst = new ArrayList<Token>();
    open.descendingIterator().forEachRemaining(outermostFirst::add);
    return new Brackets(outermostFirst, stray);
  }

  private static boolean closes(char open, char close) {
    return "([{".indexOf(open) == ")]}".indexOf(close);
  }

  /**
   * What has to be appended so that a parser sees an end.
   *
   * @param code the code of these brackets
   * @return closing brackets and a semicolon
   */
  String closers(String code) {
    var text = new StringBuilder("\n");
    for (var index = open.size() - 1; index >= 0; index--) {
      var token = open.get(index);
      text.append(
          switch (code.charAt(token.start())) {
            case '(' -> ")";
            case '[' -> "]";
            default -> isInitialiser(code, token) ? "}" : ";}";
          });
    }
    return text.append(';').toString();
  }

  private static boolean isInitialiser(String code, Token brace) {
    var before = code.substring(0, brace.start()).stripTrailing();
    return !before.isEmpty()
        && "=],{".indexOf(before.charAt(before.length() - 1)) >= 0
        && !before.endsWith(">=");
  }
}
