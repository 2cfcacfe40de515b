package agro.notebook.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** Turns the Markdown of one notebook into HTML and remembers its headings. */
final class PageProse {

  /**
   * A heading of the page.
   *
   * @param level 1 for a title, 2 for a chapter, and so on
   * @param id the name of its place in the page
   * @param text its words
   */
  record PageHeading(int level, String id, String text) {}

  private static final List<org.commonmark.Extension> TABLES = List.of(TablesExtension.create());
  private static final Parser PARSER =
      Parser.builder()
          .extensions(TABLES)
          .customInlineContentParserFactory(new FormulaParser.Factory())
          .build();

  private final List<PageHeading> headings = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();
  private final PagePictures pictures;
  private final HtmlRenderer renderer;

  /**
   * Prose of one page.
   *
   * @param folder where the pictures that the prose names are looked for
   */
  PageProse(Path folder) {
    pictures = new PagePictures(folder);
    renderer =
        HtmlRenderer.builder()
            .extensions(TABLES)
            .sanitizeUrls(true)
            .nodeRendererFactory(context -> new FormulaParser.Renderer(context.getWriter()))
            .nodeRendererFactory(context -> new ForeignMarkup(context, pictures::find))
            .attributeProviderFactory(context -> this::nameHeading)
            .build();
  }

  /**
   * Prose of the page itself; its headings are remembered.
   *
   * @param cell CommonMark with tables, formulas between dollars and pictures; of HTML in it what
   *     is harmless is followed, other markup is shown as text
   * @return HTML
   */
  String html(NotebookCell cell) {
    pictures.lookIn(cell);
    return html(cell.source());
  }

  /** Whatever the HTML in the prose leaves open is closed here. */
  private String html(String markdown) {
    var rendered = renderer.render(PARSER.parse(markdown));
    return HtmlCleaner.clean(rendered, PagePictures::inData).html();
  }

  /**
   * Prose that a cell has shown; its headings do not count as the page's.
   *
   * @param markdown CommonMark with tables and formulas between dollars
   * @return HTML
   */
  String aside(String markdown) {
    pictures.lookIn(null);
    var before = headings.size();
    var html = html(markdown);
    headings.subList(before, headings.size()).clear();
    return html;
  }

  List<PageHeading> headings() {
    return List.copyOf(headings);
  }

  private void nameHeading(Node node, String tag, Map<String, String> attributes) {
    if (node instanceof Heading heading) {
      var text = words(heading);
      var id = freeId(text);
      headings.add(new PageHeading(heading.getLevel(), id, text));
      attributes.put("id", id);
    }
  }

  private String freeId(String text) {
    var plain =
        text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    var base = plain.isEmpty() ? "part" : plain;
    var id = base;
    for (var count = 2; !ids.add(id); count++) {
      id = base + "-" + count;
    }
    return id;
  }

  private static String words(Node heading) {
    var words = new StringBuilder();
    heading.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text text) {
            words.append(text.getLiteral());
          }

          @Override
          public void visit(Code code) {
            words.append(code.getLiteral());
          }

          @Override
          public void visit(SoftLineBreak lineBreak) {
            words.append(' ');
          }

          @Override
          public void visit(CustomNode node) {
            words.append(node instanceof FormulaParser.Formula formula ? formula.tex() : "");
          }
        });
    return words.toString().strip();
  }
}
