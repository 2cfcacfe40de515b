package agro.notebook.run;

import agro.notebook.display.MimeBundle;
import agro.notebook.kernel.CellFailure;
import agro.notebook.kernel.CellOutput;
import agro.working.HtmlText;
import com.google.gson.FormattingStyle;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Shows what cells printed and showed: of each thing the best form that is harmless on a page. */
final class PageOutputs {

  private static final String SVG = "image/svg+xml";
  private static final int SHORT_JSON = 12;
  private static final Gson PRETTY =
      new GsonBuilder()
          .setFormattingStyle(FormattingStyle.PRETTY)
          .serializeNulls()
          .disableHtmlEscaping()
          .create();

  /** One form of a thing. */
  private interface Form {
    /**
     * Writes the thing.
     *
     * @param content the content in this form
     * @param words what a reader is told who cannot see it
     * @return HTML, or empty when this content cannot be shown
     */
    Optional<String> html(String content, String words);
  }

  private final PageProse prose;
  private final Map<String, Form> bestFirst = new LinkedHashMap<>();

  PageOutputs(PageProse prose) {
    this.prose = prose;
    bestFirst.put(MimeBundle.HTML, (content, words) -> html(content));
    bestFirst.put(MimeBundle.MARKDOWN, (content, words) -> Optional.of(prose.aside(content)));
    bestFirst.put(MimeBundle.LATEX, (content, words) -> Optional.of(formula(content)));
    bestFirst.put(SVG, PageOutputs::drawing);
    for (var format : new String[] {MimeBundle.PNG, "image/jpeg", "image/gif", "image/webp"}) {
      bestFirst.put(format, (content, words) -> picture(format, content, words));
    }
    bestFirst.put(MimeBundle.JSON, (content, words) -> json(content));
    bestFirst.put(MimeBundle.TEXT, (content, words) -> Optional.of(words(content)));
  }

  /**
   * Something that was printed or shown.
   *
   * @param output the output
   * @return HTML; nothing for an output without content
   */
  String html(CellOutput output) {
    if (output instanceof CellOutput.Printed printed) {
      return printed.text().isBlank()
          ? ""
          : "<pre class=\""
              + (printed.isOrdinary() ? "printed" : "remark")
              + "\">"
              + AnsiText.html(printed.text().stripTrailing())
              + "</pre>\n";
    }
    return output.bundle().map(this::html).orElse("");
  }

  /**
   * Something that was shown.
   *
   * @param bundle the thing in its forms
   * @return HTML
   */
  String html(MimeBundle bundle) {
    if (bundle.isEmpty()) {
      return "";
    }
    for (var form : bestFirst.entrySet()) {
      var content = bundle.get(form.getKey());
      var html = content.flatMap(text -> form.getValue().html(text, bundle.plainText()));
      if (html.isPresent()) {
        return "<div class=\"result\">\n" + html.get() + "\n</div>\n";
      }
    }
    return "<p class=\"missing\">A result that this page cannot show: "
        + HtmlText.escape(String.join(", ", bundle.data().keySet()))
        + "</p>\n";
  }

  /** HTML of which nothing visible is left gives way to another form. */
  private static Optional<String> html(String content) {
    var cleaned = HtmlCleaner.clean(content, PagePictures::inData);
    return cleaned.visible() ? Optional.of(cleaned.html()) : Optional.empty();
  }

  private String formula(String tex) {
    var inside = tex.strip();
    for (var marks : new String[] {"$$ $$", "\\[ \\]", "$ $", "\\( \\)"}) {
      var open = marks.substring(0, marks.indexOf(' '));
      var close = marks.substring(marks.indexOf(' ') + 1);
      var isWhole =
          inside.length() > 2 * open.length() && inside.startsWith(open) && inside.endsWith(close);
      if (isWhole) {
        inside = inside.substring(open.length(), inside.length() - close.length());
        if (!inside.contains("$")) {
          return MathMarkup.of(inside.strip(), !marks.equals("$ $") && !marks.startsWith("\\("));
        }
        inside = tex.strip();
      }
    }
    return inside.contains("$") ? prose.aside(inside) : MathMarkup.of(inside, true);
  }

  private static Optional<String> drawing(String content, String words) {
    if (!content.contains("<svg")) {
      return Optional.empty();
    }
    var data = Base64.getEncoder().encodeToString(content.getBytes(StandardCharsets.UTF_8));
    return Optional.of(PagePictures.html(SVG, data, words));
  }

  private static Optional<String> picture(String format, String content, String words) {
    return PagePictures.base64(content).map(data -> PagePictures.html(format, data, words));
  }

  private static Optional<String> json(String content) {
    try {
      var pretty = PRETTY.toJson(JsonParser.parseString(content));
      var open = pretty.lines().count() <= SHORT_JSON;
      return Optional.of(
          "<details class=\"json\""
              + (open ? " open" : "")
              + "><summary>JSON</summary>\n<pre>"
              + HtmlText.escape(pretty)
              + "</pre></details>");
    } catch (JsonParseException malformed) {
      return Optional.of(words(content));
    }
  }

  /** One line reads like prose; several may be laid out in columns. */
  private static String words(String text) {
    var settled = AnsiText.html(text.stripTrailing());
    var tag = settled.contains("\n") ? "pre" : "p";
    return "<" + tag + " class=\"value\">" + settled + "</" + tag + ">";
  }

  /**
   * What went wrong in a cell.
   *
   * @param failure the failure
   * @return HTML
   */
  static String html(CellFailure failure) {
    return "<pre class=\"failure\">"
        + AnsiText.html(String.join("\n", failure.trace()))
        + "</pre>\n";
  }
}
