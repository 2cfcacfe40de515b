package agro.notebook.display;

import agro.report.InputProblem;

/**
 * Whether text is JSON by RFC 8259 (grammar of its sections 2 to 7). A document that is not would
 * make the whole notebook file unreadable.
 */
final class JsonCheck {

  private static final int DEEPEST = 200;

  private final String text;
  private int at;

  private JsonCheck(String text) {
    this.text = text;
  }

  /**
   * Refuses text that is not JSON.
   *
   * @param text any text
   * @throws InputProblem when it is not one JSON value
   */
  static void require(String text) {
    var check = new JsonCheck(text);
    check.blank();
    check.value(0);
    check.blank();
    if (check.at < text.length()) {
      throw check.problem("the end of the document");
    }
  }

  private void value(int depth) {
    if (depth > DEEPEST) {
      throw problem("at most " + DEEPEST + " levels of brackets");
    }
    switch (peek()) {
      case '{' -> object(depth);
      case '[' -> array(depth);
      case '"' -> string();
      case 't' -> word("true");
      case 'f' -> word("false");
      case 'n' -> word("null");
      default -> number();
    }
  }

  private void object(int depth) {
    at++;
    blank();
    if (take('}')) {
      return;
    }
    do {
      blank();
      if (peek() != '"') {
        throw problem("a name in double quotes");
      }
      string();
      blank();
      if (!take(':')) {
        throw problem("a colon after the name");
      }
      blank();
      value(depth + 1);
      blank();
    } while (take(','));
    if (!take('}')) {
      throw problem("a comma or a closing brace");
    }
  }

  private void array(int depth) {
    at++;
    blank();
    if (take(']')) {
      return;
    }
    do {
      blank();
      value(depth + 1);
      blank();
    } while (take(','));
    if (!take(']')) {
      throw problem("a comma or a closing bracket");
    }
  }

  private void string() {
    at++;
    while (peek() != '"') {
      if (peek() < ' ') {
        throw problem(at < text.length() ? "no control character in text" : "a closing quote");
      }
      if (text.charAt(at++) == '\\') {
        escape();
      }
    }
    at++;
  }

  private void escape() {
    var kind = peek();
    if ("\"\\/bfnrt".indexOf(kind) < 0 && kind != 'u') {
      throw problem("an escape such as \\n or \\u00e9");
    }
    at++;
    for (var digit = 0; kind == 'u' && digit < 4; digit++, at++) {
      if (Character.digit(peek(), 16) < 0 || peek() > 'f') {
        throw problem("four hexadecimal digits");
      }
    }
  }

  private void number() {
    take('-');
    if (!take('0')) {
      digits("a value");
    }
    if (take('.')) {
      digits("a digit after the point");
    }
    if (take('e') || take('E')) {
      if (!take('+')) {
        take('-');
      }
      digits("a digit of the exponent");
    }
  }

  private void digits(String expected) {
    var start = at;
    while (peek() >= '0' && peek() <= '9') {
      at++;
    }
    if (at == start) {
      throw problem(expected);
    }
  }

  private void word(String word) {
    if (!text.startsWith(word, at)) {
      throw problem("the word " + word);
    }
    at += word.length();
  }

  private boolean take(char wanted) {
    var there = at < text.length() && text.charAt(at) == wanted;
    at += there ? 1 : 0;
    return there;
  }

  private char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  private void blank() {
    while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
  }

  private InputProblem problem(String expected) {
    var before = text.substring(0, at);
    var line = before.chars().filter(c -> c == '\n').count() + 1;
    var column = at - before.lastIndexOf('\n');
    var found =
        at >= text.length()
            ? "the end of the text"
            : "\"" + PlainText.head(text.substring(at), 20) + "\"";
    return InputProblem.of("JSON, line " + line + ", column " + column + ": " + found)
        .expected(expected)
        .because("text that is not JSON by RFC 8259 would make the notebook file unreadable")
        .mend("correct the text at that place");
  }
}
