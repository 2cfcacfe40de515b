package agro.notebook.insight;

import java.util.regex.Pattern;

/** What a compiler says, without what the reader of a cell never wrote. */
public final class CompilerMessage {

  private static final Pattern WRAPPER = Pattern.compile("\\bREPL\\.\\$JShell\\$\\w+(?:[.$]|\\b)");
  private static final Pattern OVERLOAD =
      Pattern.compile("^(?:method|constructor) .* is not applicable$|^\\(.*");
  private static final Pattern NOWHERE = Pattern.compile("location: class\\s*|.*do_it\\$.*");

  private CompilerMessage() {}

  /**
   * A text without the names of the classes that the shell wraps round the code of cells.
   *
   * @param text any text
   * @return the text as the reader would write it
   */
  public static String asWritten(String text) {
    return WRAPPER.matcher(text).replaceAll("");
  }

  /**
   * A compiler's message on one line.
   *
   * @param message what the compiler said, often on several lines
   * @return the first line, with the others in brackets; long lists of what does not fit left out
   */
  public static String onOneLine(String message) {
    var lines =
        asWritten(message)
            .lines()
            .map(line -> line.replaceAll("\\s+", " ").strip())
            .filter(line -> !line.isEmpty() && !NOWHERE.matcher(line).matches())
            .toList();
    if (lines.isEmpty()) {
      return "";
    }
    var all = lines.stream().anyMatch(line -> line.endsWith(" is not applicable"));
    var rest =
        lines.stream()
            .skip(1)
            .filter(line -> !all || !OVERLOAD.matcher(line).matches())
            .map(line -> line.replaceAll("^\\((.*)\\)$", "$1"))
            .toList();
    var first = lines.get(0).replace(" in class cannot ", " cannot ");
    return rest.isEmpty() ? first : first + " (" + String.join(", ", rest) + ")";
  }
}
