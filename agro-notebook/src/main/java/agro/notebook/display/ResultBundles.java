package agro.notebook.display;

import agro.working.Presentation;
import agro.working.ResultTable;

/** Results of the library in the formats that a notebook shows. */
public final class ResultBundles {

  private ResultBundles() {}

  /**
   * A presentation in its formats.
   *
   * @param presentation any presentation
   * @return HTML, Markdown and plain text
   */
  public static MimeBundle of(Presentation presentation) {
    return MimeBundle.of(MimeBundle.HTML, styled(presentation.toHtml()))
        .with(MimeBundle.MARKDOWN, presentation.toMarkdown())
        .with(MimeBundle.TEXT, presentation.toText());
  }

  /**
   * A table in its formats.
   *
   * @param table any table
   * @return HTML, Markdown and plain text
   */
  public static MimeBundle of(ResultTable table) {
    return MimeBundle.of(MimeBundle.HTML, styled(table.toHtml()))
        .with(MimeBundle.MARKDOWN, table.toMarkdown())
        .with(MimeBundle.TEXT, table.toText());
  }

  /** HTML with the rules for tables before it, where it has tables. */
  static String styled(String html) {
    return html.contains("class=\"agro-table\"") ? TableStyle.ELEMENT + html : html;
  }
}
