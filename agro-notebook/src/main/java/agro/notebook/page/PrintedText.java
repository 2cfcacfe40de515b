package agro.notebook.page;

import agro.working.HtmlText;
import java.util.regex.Pattern;

/**
 * Text of exercises as it is set in print: a true minus sign, raised exponents, and no line end
 * between a number and its unit. What somebody typed and ids are not set this way.
 */
final class PrintedText {

  /** A hyphen that stands for a minus, not one inside a word, a range or a date. */
  private static final Pattern MINUS = Pattern.compile("(?<![\\p{L}\\p{M}\\d.,)\\]-])-(?=\\d)");

  /** What is raised: all in parentheses, a logarithm, or one number or name. */
  private static final Pattern EXPONENT =
      Pattern.compile("\\^(?:\\(([^()]*)\\)|(log [\\p{L}\\d]+|[−-]?[\\p{L}\\d]+(?:[.,]\\d+)?))");

  /** A number and the unit or other short word behind it. */
  private static final Pattern MEASURE =
      Pattern.compile(
          "(?=[−\\d])(?<![\\p{L}\\d.,−])−?\\d+(?:[.,]\\d+)? [\\p{L}°%‰$€£µ][^\\s<>]{0,11}(?=[\\s<]|$)");

  private PrintedText() {}

  /**
   * Text between tags.
   *
   * @param text any text
   * @return the text, safe for HTML
   */
  static String html(String text) {
    var minus = text.indexOf('-') < 0 ? text : MINUS.matcher(text).replaceAll("−");
    var escaped = HtmlText.escape(minus);
    var raised =
        escaped.indexOf('^') < 0
            ? escaped
            : EXPONENT.matcher(escaped).replaceAll("<sup>$1$2</sup>");
    return MEASURE.matcher(raised).replaceAll("<span class=\"measure\">$0</span>");
  }
}
