package agro.notebook.run;

import agro.working.HtmlText;
import java.util.LinkedHashMap;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;

/** Pictures and HTML in prose: what can be shown is shown, everything else stands as text. */
final class ForeignMarkup implements NodeRenderer {

  private static final Pattern TAG = Pattern.compile("(?s)</?\\s*([a-zA-Z][a-zA-Z0-9-]*).*");

  private final HtmlNodeRendererContext context;
  private final Function<String, Optional<String>> pictures;

  ForeignMarkup(HtmlNodeRendererContext context, Function<String, Optional<String>> pictures) {
    this.context = context;
    this.pictures = pictures;
  }

  @Override
  public Set<Class<? extends Node>> getNodeTypes() {
    return Set.of(Image.class, HtmlInline.class, HtmlBlock.class);
  }

  @Override
  public void render(Node node) {
    if (node instanceof Image image) {
      picture(image);
    } else if (node instanceof HtmlInline inline) {
      inline(inline.getLiteral());
    } else if (node instanceof HtmlBlock block) {
      block(block.getLiteral());
    }
  }

  private void picture(Image image) {
    var words = words(image);
    var content = pictures.apply(image.getDestination());
    var writer = context.getWriter();
    if (content.isEmpty()) {
      writer.tag("span", java.util.Map.of("class", "missing"));
      var name = words.isBlank() ? image.getDestination() : words;
      writer.text("[picture: " + name + "; it was not found beside the notebook]");
      writer.tag("/span");
      return;
    }
    var attributes = new LinkedHashMap<String, String>();
    attributes.put("src", content.get());
    attributes.put("alt", words.isBlank() ? PagePictures.WITHOUT_WORDS : words);
    if (image.getTitle() != null) {
      attributes.put("title", image.getTitle());
    }
    writer.tag("img", attributes, true);
  }

  private static String words(Image image) {
    var words = new StringBuilder();
    image.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text text) {
            words.append(text.getLiteral());
          }

          @Override
          public void visit(Code code) {
            words.append(code.getLiteral());
          }
        });
    return words.toString();
  }

  /** A tag within a line; its end is another one, so that only the tag itself can be judged. */
  private void inline(String tag) {
    var name = TAG.matcher(tag);
    if (tag.startsWith("<!--")) {
      return;
    }
    var known =
        name.matches() && HtmlTags.isAllowed(name.group(1).toLowerCase(java.util.Locale.ROOT));
    if (!known) {
      context.getWriter().raw(HtmlText.escape(tag));
    } else if (name.group(1).equalsIgnoreCase("img")) {
      context.getWriter().raw(HtmlCleaner.clean(tag, pictures).html());
    } else {
      // Cleaned and closed with the rest of the prose.
      context.getWriter().raw(tag);
    }
  }

  private void block(String html) {
    var cleaned = HtmlCleaner.clean(html, pictures);
    var writer = context.getWriter();
    writer.line();
    if (cleaned.complete() || html.contains("<img")) {
      writer.raw(html.contains("<img") ? cleaned.html() : html);
    } else {
      writer.tag("p");
      writer.text(html);
      writer.tag("/p");
    }
    writer.line();
  }
}
