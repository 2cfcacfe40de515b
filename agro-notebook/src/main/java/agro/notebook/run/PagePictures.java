package agro.notebook.run;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;

/** Puts the pictures that prose names into the page itself. */
final class PagePictures implements NodeRenderer {

  private static final Map<String, String> FORMATS =
      Map.of("png", "image/png", "jpg", "image/jpeg", "jpeg", "image/jpeg", "gif", "image/gif");

  private final HtmlNodeRendererContext context;
  private final Path folder;

  PagePictures(HtmlNodeRendererContext context, Path folder) {
    this.context = context;
    this.folder = folder;
  }

  @Override
  public Set<Class<? extends Node>> getNodeTypes() {
    return Set.of(Image.class);
  }

  @Override
  public void render(Node node) {
    var image = (Image) node;
    var words = new StringBuilder();
    image.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text text) {
            words.append(text.getLiteral());
          }
        });
    var attributes = new LinkedHashMap<String, String>();
    attributes.put("src", source(image.getDestination()));
    attributes.put("alt", words.toString());
    context.getWriter().tag("img", attributes, true);
  }

  private String source(String destination) {
    if (destination.startsWith("data:image/")) {
      return destination;
    }
    var ending = destination.substring(destination.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    var file = folder.resolve(destination);
    if (destination.contains("://") || !FORMATS.containsKey(ending) || !Files.isReadable(file)) {
      throw InputProblem.at(SourceLocation.NONE, "the picture " + destination + " was not found")
          .expected("a PNG, JPEG or GIF file beside the notebook")
          .because("a page carries its pictures in itself and loads nothing")
          .mend("put the file there or take the picture out of the prose");
    }
    try {
      var bytes = Base64.getEncoder().encodeToString(Files.readAllBytes(file));
      return "data:" + FORMATS.get(ending) + ";base64," + bytes;
    } catch (IOException unreadable) {
      throw InputProblem.of("the picture " + file + " could not be read (" + unreadable + ")")
          .expected("a file that can be read")
          .because("a page carries its pictures in itself")
          .mend("check the file");
    }
  }
}
