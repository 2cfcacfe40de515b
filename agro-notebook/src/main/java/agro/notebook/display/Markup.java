package agro.notebook.display;

import agro.report.InputProblem;
import java.util.regex.Pattern;

/**
 * Text in a language that the reader's page understands, to be shown as what it means: {@code
 * Markup.latex("K = \\frac{a}{b}")} as the last line of a cell shows a formula.
 */
public final class Markup {

  private static final Pattern UNSEEN =
      Pattern.compile("(?is)<(script|style|head)\\b.*?</\\1\\s*>|<!--.*?-->");
  private static final Pattern BREAK =
      Pattern.compile("(?i)<(br|/p|/div|/tr|/li|/h[1-6]|/caption|/table)\\b[^>]*>");
  private static final Pattern CELL_END = Pattern.compile("(?i)</t[dh]\\s*>");
  private static final Pattern TAG = Pattern.compile("<[/!a-zA-Z][^>]*>");

  private Markup() {}

  /**
   * HTML. It is shown as it is: text from data has to be escaped by whoever puts it in.
   *
   * @param fragment a fragment of HTML
   * @return the HTML, with its words as plain text
   */
  public static MimeBundle html(String fragment) {
    return MimeBundle.of(MimeBundle.HTML, fragment).with(MimeBundle.TEXT, words(fragment));
  }

  /**
   * Markdown.
   *
   * @param text Markdown, formulas between dollar signs
   * @return the Markdown, which is its own plain text
   */
  public static MimeBundle markdown(String text) {
    return MimeBundle.of(MimeBundle.MARKDOWN, text).with(MimeBundle.TEXT, text);
  }

  /**
   * A formula in LaTeX.
   *
   * @param formula the formula; dollar signs around it may be left out
   * @return the formula on a line of its own, with its source as plain text
   */
  public static MimeBundle latex(String formula) {
    var bare = formula.strip();
    var delimited = bare.startsWith("$") || bare.startsWith("\\[") || bare.startsWith("\\(");
    var latex = delimited || bare.startsWith("\\begin{") ? bare : "$$" + bare + "$$";
    var inMarkdown = bare.startsWith("\\begin{") ? "$$" + bare + "$$" : latex;
    return MimeBundle.of(MimeBundle.LATEX, latex)
        .with(MimeBundle.MARKDOWN, inMarkdown)
        .with(MimeBundle.TEXT, bare);
  }

  /**
   * JSON, shown as a tree where the page can do that.
   *
   * @param text a JSON document
   * @return the JSON, which is its own plain text
   * @throws InputProblem when it is not JSON by RFC 8259; the message says where
   */
  public static MimeBundle json(String text) {
    return MimeBundle.of(MimeBundle.JSON, text).with(MimeBundle.TEXT, text);
  }

  /** The words of HTML without its tags. */
  static String words(String html) {
    var text = UNSEEN.matcher(html).replaceAll("");
    text = CELL_END.matcher(text).replaceAll("  ");
    text = BREAK.matcher(text).replaceAll("\n");
    text = TAG.matcher(text).replaceAll("");
    return text.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&nbsp;", " ")
        .replace("&amp;", "&")
        .replaceAll("[ \\t]+\\n", "\n")
        .replaceAll("\\n{3,}", "\n\n")
        .strip();
  }
}
