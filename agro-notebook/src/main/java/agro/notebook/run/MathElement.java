package agro.notebook.run;

import agro.working.HtmlText;
import java.util.List;

/** Elements of MathML. */
final class MathElement {

  private MathElement() {}

  static String of(String tag, String... parts) {
    return "<" + tag + ">" + String.join("", parts) + "</" + tag + ">";
  }

  static String row(List<String> parts) {
    return "<mrow>" + String.join("", parts) + "</mrow>";
  }

  static String leaf(String tag, String text) {
    return "<" + tag + ">" + HtmlText.escape(text) + "</" + tag + ">";
  }

  static String operator(String sign) {
    return leaf("mo", sign);
  }

  /** A sign that keeps its size, whatever stands beside it. */
  static String still(String sign) {
    return "<mo stretchy=\"false\">" + HtmlText.escape(sign) + "</mo>";
  }

  static String space(String width) {
    return "<mspace width=\"" + width + "\"></mspace>";
  }

  /** Words; their spaces stay. */
  static String words(String text) {
    return leaf("mtext", text.replace(' ', '\u00a0'));
  }
}
