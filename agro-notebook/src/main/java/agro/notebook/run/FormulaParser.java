package agro.notebook.run;

import java.util.Set;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Node;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlWriter;

/**
 * Formulas in prose: TeX between single dollars within a line of text, between double dollars on a
 * line of its own. A dollar before a space or a closing one before a digit is an amount of money.
 */
final class FormulaParser implements InlineContentParser {

  /** A formula. */
  static final class Formula extends CustomNode {
    private final String tex;
    private final boolean display;

    Formula(String tex, boolean display) {
      this.tex = tex;
      this.display = display;
    }

    String tex() {
      return tex;
    }
  }

  /** Makes the parser known to CommonMark. */
  static final class Factory implements InlineContentParserFactory {
    @Override
    public Set<Character> getTriggerCharacters() {
      return Set.of('$');
    }

    @Override
    public InlineContentParser create() {
      return new FormulaParser();
    }
  }

  /**
   * Writes formulas as MathML, which browsers show without a script.
   *
   * @param writer where to
   */
  record Renderer(HtmlWriter writer) implements NodeRenderer {
    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
      return Set.of(Formula.class);
    }

    @Override
    public void render(Node node) {
      var formula = (Formula) node;
      writer.raw(MathMarkup.of(formula.tex, formula.display));
    }
  }

  @Override
  public ParsedInline tryParse(InlineParserState state) {
    var scanner = state.scanner();
    var mark = scanner.matchMultiple('$') > 1 ? "$$" : "$";
    var start = scanner.position();
    if (mark.length() == 1 && Character.isWhitespace(scanner.peek())) {
      return ParsedInline.none();
    }
    while (scanner.find('$') >= 0) {
      var end = scanner.position();
      var before = scanner.peekPreviousCodePoint();
      if (before == '\\') {
        scanner.next();
        continue;
      }
      var tex = scanner.getSource(start, end).getContent().strip();
      return scanner.next(mark) && closes(mark, before, scanner.peek()) && !tex.isEmpty()
          ? ParsedInline.of(new Formula(tex, mark.length() == 2), scanner.position())
          : ParsedInline.none();
    }
    return ParsedInline.none();
  }

  private static boolean closes(String mark, int before, char after) {
    return mark.length() == 2 || (!Character.isWhitespace(before) && !Character.isDigit(after));
  }
}
