package agro.notebook.insight;

import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EndElementTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.ErroneousTree;
import com.sun.source.doctree.IndexTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ReferenceTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.StartElementTree;
import com.sun.source.doctree.SummaryTree;
import com.sun.source.doctree.SystemPropertyTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.doctree.UnknownInlineTagTree;
import com.sun.source.doctree.ValueTree;
import java.util.List;

/** Writes the content of documentation comments. */
final class JavadocWriter {

  private final DocMarkup markup;

  JavadocWriter(DocMarkup markup) {
    this.markup = markup;
  }

  /**
   * Writes running text with its inline tags.
   *
   * @param content part of a comment
   */
  void write(List<? extends DocTree> content) {
    content.forEach(this::write);
  }

  private void write(DocTree tree) {
    if (tree instanceof TextTree text) {
      markup.text(text.getBody());
    } else if (tree instanceof EntityTree entity) {
      markup.entity(entity.getName().toString());
    } else if (tree instanceof StartElementTree element) {
      markup.open(element.getName().toString());
    } else if (tree instanceof EndElementTree element) {
      markup.close(element.getName().toString());
    } else if (tree instanceof LiteralTree literal) {
      writeLiteral(literal);
    } else if (tree instanceof LinkTree link) {
      writeLink(link);
    } else if (tree instanceof ReferenceTree reference) {
      markup.code(readable(reference));
    } else {
      writeRare(tree);
    }
  }

  private void writeLiteral(LiteralTree literal) {
    var text = literal.getBody().getBody();
    if (literal.getKind() == DocTree.Kind.CODE) {
      markup.code(text);
    } else {
      markup.text(text);
    }
  }

  private void writeLink(LinkTree link) {
    if (!link.getLabel().isEmpty()) {
      write(link.getLabel());
    } else if (link.getKind() == DocTree.Kind.LINK) {
      markup.code(readable(link.getReference()));
    } else {
      markup.text(readable(link.getReference()));
    }
  }

  private void writeRare(DocTree tree) {
    if (tree instanceof ValueTree value) {
      markup.code(value.getReference() == null ? "its value" : readable(value.getReference()));
    } else if (tree instanceof SummaryTree summary) {
      write(summary.getSummary());
    } else if (tree instanceof IndexTree index) {
      write(index.getSearchTerm());
    } else if (tree instanceof SystemPropertyTree property) {
      markup.code(property.getPropertyName().toString());
    } else if (tree instanceof ReturnTree result) {
      markup.text("Returns ");
      write(result.getDescription());
      markup.text(".");
    } else if (tree instanceof UnknownInlineTagTree unknown) {
      write(unknown.getContent());
    } else if (tree instanceof ErroneousTree broken) {
      markup.text(broken.getBody());
    } else if (tree.getKind() != DocTree.Kind.COMMENT
        && tree.getKind() != DocTree.Kind.INHERIT_DOC) {
      markup.text(tree.toString());
    }
  }

  /** A reference as code would have it: {@code #size()} is {@code size()}. */
  private static String readable(ReferenceTree reference) {
    var text = reference.getSignature().replaceFirst("^#", "").replace('#', '.');
    return Signatures.shortened(text);
  }
}
