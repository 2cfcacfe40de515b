package agro.notebook.insight;

import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a compiler refused.
 *
 * @param code the compiler's own name of the problem, for example {@code
 *     compiler.err.cant.resolve.location}
 * @param message what it said, in full and on several lines
 * @param text the code of the cell
 * @param start where the refused code begins
 * @param position where exactly the problem is
 * @param end where the refused code ends
 */
public record CompilerSlip(
    String code, String message, String text, int start, int position, int end) {

  private static final Pattern SYMBOL =
      Pattern.compile("symbol:\\s+(\\w+) ([^\\s(]+)", Pattern.UNICODE_CHARACTER_CLASS);
  private static final Pattern CONVERTED =
      Pattern.compile("(\\S+(?: \\S+)*?) cannot be converted to (\\S+(?:, ?\\S+)*)");

  /** Keeps the positions within the cell. */
  public CompilerSlip {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(message, "message");
    start = within(start, text);
    position = within(position, text);
    end = within(end, text);
  }

  private static int within(int at, String text) {
    return Math.max(0, Math.min(at, text.length()));
  }

  boolean is(String... names) {
    for (var name : names) {
      if (code.equals("compiler.err." + name)) {
        return true;
      }
    }
    return false;
  }

  /** Kind of symbol that was not found, for example {@code method}. */
  String symbolKind() {
    var found = SYMBOL.matcher(message);
    return found.find() ? found.group(1) : "";
  }

  /** Name that was not found. */
  String symbol() {
    var found = SYMBOL.matcher(message);
    return found.find() ? found.group(2) : "";
  }

  /** Where the name that was not found begins. */
  int symbolStart() {
    var name = symbol();
    var at = text.indexOf(name, position);
    return at >= 0 && at <= end ? at : Math.max(0, text.indexOf(name, start));
  }

  /** The value of a line such as {@code found: int}. */
  String detail(String name) {
    return message
        .lines()
        .map(String::strip)
        .filter(line -> line.startsWith(name + ":"))
        .map(line -> line.substring(name.length() + 1).strip())
        .findFirst()
        .orElse("");
  }

  /** The types on the two sides of "cannot be converted to". */
  Optional<Conversion> conversion() {
    for (var line : message.lines().toList()) {
      var reason = line.substring(line.lastIndexOf(": ") < 0 ? 0 : line.lastIndexOf(": ") + 2);
      var mismatch =
          reason.substring(reason.lastIndexOf("; ") < 0 ? 0 : reason.lastIndexOf("; ") + 2);
      var found = CONVERTED.matcher(mismatch.replace("(argument mismatch; ", "").strip());
      if (found.find()) {
        return Optional.of(new Conversion(found.group(1), found.group(2).replaceAll("\\)$", "")));
      }
    }
    return Optional.empty();
  }

  /**
   * A value of one type where another is wanted.
   *
   * @param found full name of the type that is there
   * @param required full name of the type that is wanted
   */
  record Conversion(String found, String required) {}

  /** The refused code. */
  String refused() {
    return text.substring(Math.min(start, end), Math.max(start, end));
  }

  /** The line of the problem. */
  String line() {
    var from = text.lastIndexOf('\n', position - 1) + 1;
    var to = text.indexOf('\n', position);
    return text.substring(from, to < 0 ? text.length() : to);
  }

  /** The number of the line of a position, counted from 1. */
  int lineOf(int at) {
    return 1 + (int) text.substring(0, within(at, text)).chars().filter(one -> one == '\n').count();
  }

  /** The last letter of code before a position that is no space, or a blank. */
  char before(int at) {
    var code = text.substring(0, at).stripTrailing();
    return code.isEmpty() ? ' ' : code.charAt(code.length() - 1);
  }

  /** The word that begins at a position, or the sign that stands there. */
  String wordAt(int at) {
    var from = at;
    while (from < text.length() && Character.isWhitespace(text.charAt(from))) {
      from++;
    }
    var to = JavaTokens.endOfWord(text, from);
    return to > from
        ? text.substring(from, to)
        : from < text.length() ? text.substring(from, from + 1) : "";
  }
}
