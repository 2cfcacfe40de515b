package agro.notebook.insight;

import agro.notebook.insight.JavaTokens.Kind;
import agro.notebook.insight.JavaTokens.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** A cell cut into its imports, declarations and statements, complete or not. */
final class CellParts {

  /** What a part is; it says where Java allows it. */
  enum PartKind {
    IMPORT,
    TYPE,
    METHOD,
    STATEMENT
  }

  /**
   * One part.
   *
   * @param kind what it is
   * @param start where it begins, with the comments before it
   * @param end where it ends, exclusive
   */
  record Part(PartKind kind, int start, int end) {}

  private static final String MODIFIERS =
      "(?:(?:@[\\w.]+(?:\\s*\\([^)]*\\))?|public|protected|private|static|final|abstract|default"
          + "|synchronized|native|strictfp|sealed|non-sealed)\\s+)*+";
  private static final Pattern TYPE =
      Pattern.compile(
          "^"
              + MODIFIERS
              + "(?:class\\b|interface\\b|enum\\b|@\\s*interface\\b|record\\s+\\w+\\s*[<(])",
          Pattern.UNICODE_CHARACTER_CLASS);
  private static final Pattern METHOD =
      Pattern.compile(
          "^"
              + MODIFIERS
              + "(?:<[^(){};=]+>\\s*)?(?!(?:new|return|throw|else|if|for|while|switch|assert|case|yield"
              + "|do|try|import|package)\\b)[\\w$.]+(?:\\s*<[^(){};=]*>)?(?:\\s*\\[\\s*\\])*\\s+"
              + "(?!instanceof\\b)[\\w$]+\\s*\\(",
          Pattern.UNICODE_CHARACTER_CLASS);
  private static final Set<String> GO_ON = Set.of("else", "catch", "finally");

  private final String code;
  private final String masked;
  private final List<Token> tokens;

  private CellParts(String code) {
    this.code = code;
    this.masked = JavaTokens.masked(code);
    this.tokens = JavaTokens.codeIn(code);
  }

  /**
   * Cuts a cell.
   *
   * @param code Java, without lines for the notebook
   * @return the parts in order; the last one ends with the code, and is blank behind an end
   */
  static List<Part> of(String code) {
    return new CellParts(code).parts();
  }

  private List<Part> parts() {
    var parts = new ArrayList<Part>();
    var start = 0;
    var first = 0;
    var depth = 0;
    for (var index = 0; index < tokens.size(); index++) {
      var token = tokens.get(index);
      depth = Math.max(0, depth + step(token));
      if (depth == 0 && ends(first, index)) {
        parts.add(part(start, token.end(), first));
        start = token.end();
        first = index + 1;
      }
    }
    parts.add(part(start, code.length(), first));
    return parts;
  }

  /**
   * The part that a position stands in.
   *
   * @param parts the parts of a cell
   * @param at a position
   * @return the part that holds the letter behind the position, or the last one
   */
  static Part around(List<Part> parts, int at) {
    for (var part : parts) {
      if (at < part.end()) {
        return part;
      }
    }
    return parts.get(parts.size() - 1);
  }

  private int step(Token token) {
    if (token.kind() != Kind.SIGN) {
      return 0;
    }
    return switch (code.charAt(token.start())) {
      case '(', '[', '{' -> 1;
      case ')', ']', '}' -> -1;
      default -> 0;
    };
  }

  private boolean ends(int first, int index) {
    var token = tokens.get(index);
    var next = index + 1 < tokens.size() ? tokens.get(index + 1).in(code) : "";
    var goesOn = GO_ON.contains(next) || (next.equals("while") && tokens.get(first).is(code, "do"));
    if (token.is(code, ";")) {
      return !goesOn && !(tokens.get(first).is(code, "do") && first == index - 1);
    }
    if (!token.is(code, "}") || goesOn) {
      return false;
    }
    var kind = kind(first, token.end());
    return (kind == PartKind.TYPE || kind == PartKind.METHOD)
        ? !next.equals(";")
        : next.isEmpty() || ".;,)]=?:&|<>*/%^[(".indexOf(next.charAt(0)) < 0;
  }

  private Part part(int start, int end, int first) {
    return new Part(kind(first, end), start, end);
  }

  private PartKind kind(int first, int end) {
    if (first >= tokens.size()) {
      return PartKind.STATEMENT;
    }
    var begin = tokens.get(first);
    if (begin.is(code, "import")) {
      return PartKind.IMPORT;
    }
    var text = masked.substring(begin.start(), end);
    if (TYPE.matcher(text).find()) {
      return PartKind.TYPE;
    }
    return METHOD.matcher(text).find() ? PartKind.METHOD : PartKind.STATEMENT;
  }
}
