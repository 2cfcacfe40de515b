package agro.notebook.run;

/** Reads the TeX of a formula from left to right. */
final class TexReader {

  private final String tex;
  private int at;

  TexReader(String tex) {
    this.tex = tex;
  }

  boolean atEnd() {
    return at >= tex.length();
  }

  int place() {
    return at;
  }

  String rest() {
    var rest = tex.substring(at);
    at = tex.length();
    return rest;
  }

  void skipSpaces() {
    while (!atEnd() && (Character.isWhitespace(tex.charAt(at)) || tex.charAt(at) == '%')) {
      at = tex.charAt(at) == '%' ? endOfLine() : at + 1;
    }
  }

  /** What follows a bare percent sign on its line is a remark. */
  private int endOfLine() {
    var end = tex.indexOf('\n', at);
    return end < 0 ? tex.length() : end;
  }

  /** The next character, or 0 at the end. */
  char peek() {
    return atEnd() ? 0 : tex.charAt(at);
  }

  boolean isNext(String text) {
    return tex.startsWith(text, at);
  }

  /** Whether a command of exactly this name comes next. */
  boolean isCommandNext(String name) {
    var end = at + 1 + name.length();
    return peek() == '\\'
        && tex.startsWith(name, at + 1)
        && (end >= tex.length() || !Character.isLetter(tex.charAt(end)));
  }

  boolean skip(String text) {
    if (isNext(text)) {
      at += text.length();
      return true;
    }
    return false;
  }

  boolean skipCommand(String name) {
    if (isCommandNext(name)) {
      at += 1 + name.length();
      return true;
    }
    return false;
  }

  /** The next character as a text, or nothing at the end. */
  String sign() {
    if (atEnd()) {
      return "";
    }
    var sign = Character.toString(tex.codePointAt(at));
    at += sign.length();
    return sign;
  }

  String digits() {
    var start = at;
    while (!atEnd() && (Character.isDigit(tex.charAt(at)) || isPointInNumber())) {
      at++;
    }
    return tex.substring(start, at);
  }

  private boolean isPointInNumber() {
    return tex.charAt(at) == '.' && at + 1 < tex.length() && Character.isDigit(tex.charAt(at + 1));
  }

  /** The name of the command that comes next, without its backslash. */
  String command() {
    at++;
    var start = at;
    while (!atEnd() && isLetter(tex.charAt(at))) {
      at++;
    }
    if (at == start) {
      return sign();
    }
    return tex.substring(start, at);
  }

  private static boolean isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  }

  /** The text of a group in braces, braces within it balanced; without one, the next sign. */
  String group() {
    skipSpaces();
    return peek() == '{' ? between('{', '}') : sign();
  }

  /** The text in square brackets, if it comes next. */
  String option() {
    return peek() == '[' ? between('[', ']') : "";
  }

  private String between(char open, char close) {
    var start = at + 1;
    var depth = 0;
    while (!atEnd()) {
      var c = tex.charAt(at);
      if (c == '\\' && at + 1 < tex.length()) {
        at++;
      } else if (c == open) {
        depth++;
      } else if (c == close && --depth == 0) {
        at++;
        return tex.substring(start, at - 1);
      }
      at++;
    }
    return tex.substring(Math.min(start, tex.length()));
  }
}
