package agro.working;

import java.util.regex.Pattern;

/** Text made safe for Markdown (CommonMark with pipe tables). */
final class MarkdownText {

  /**
   * Signs at the start of a line that would open a heading, a list or a rule. Numbers such as -1.5
   * and 12.5 stay as they are.
   */
  private static final Pattern LINE_START =
      Pattern.compile("^(?:([0-9]{1,9})([.)])(?= |$)|([-+#=])(?=[-#= ]|$))");

  private MarkdownText() {}

  /**
   * Escapes text so that it shows as it is: on one line, without markup, formulas or HTML.
   *
   * @param text any text
   * @return the escaped text
   */
  static String escape(String text) {
    var escaped = new StringBuilder(text.length() + 16);
    PlainText.oneLine(text)
        .chars()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '\\', '`', '*', '_', '[', ']', '|', '$', '~' ->
                    escaped.append('\\').append((char) c);
                default -> escaped.append((char) c);
              }
            });
    return LINE_START.matcher(escaped).replaceFirst("$1\\\\$2$3");
  }

  /**
   * A code span, inside which nothing is markup.
   *
   * @param text any text
   * @return the span with as many backticks as the text needs; blank text gives an empty string
   */
  static String code(String text) {
    var line = PlainText.oneLine(text);
    if (line.isEmpty()) {
      return "";
    }
    var fence = "`";
    while (line.contains(fence)) {
      fence += "`";
    }
    return line.contains("`") ? fence + " " + line + " " + fence : fence + line + fence;
  }
}
