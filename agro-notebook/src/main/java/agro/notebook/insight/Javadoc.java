package agro.notebook.insight;

import com.sun.source.doctree.BlockTagTree;
import com.sun.source.doctree.DeprecatedTree;
import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.SeeTree;
import com.sun.source.doctree.SinceTree;
import com.sun.source.doctree.ThrowsTree;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A documentation comment.
 *
 * @param first its first sentence
 * @param body all of it before the tags
 * @param tags the tags at its end
 */
record Javadoc(
    List<? extends DocTree> first, List<? extends DocTree> body, List<? extends DocTree> tags) {

  /** Makes the lists immutable. */
  Javadoc {
    first = List.copyOf(first);
    body = List.copyOf(body);
    tags = List.copyOf(tags);
  }

  static Javadoc of(DocCommentTree comment) {
    return new Javadoc(comment.getFirstSentence(), comment.getFullBody(), comment.getBlockTags());
  }

  /**
   * What the comment of a record says about one component.
   *
   * @param name the component
   * @return a comment of its own
   */
  Optional<Javadoc> component(String name) {
    return tags.stream()
        .filter(tag -> tag instanceof ParamTree param && !param.isTypeParameter())
        .map(ParamTree.class::cast)
        .filter(param -> param.getName().getName().contentEquals(name))
        .findFirst()
        .map(param -> new Javadoc(param.getDescription(), param.getDescription(), List.of()));
  }

  /** The comment of a record as that of its constructor. */
  Javadoc tagsOnly() {
    return new Javadoc(first, first, tags);
  }

  /**
   * Writes the first sentence.
   *
   * @param markup where to
   */
  void writeFirst(DocMarkup markup) {
    markup.open("p");
    new JavadocWriter(markup).write(first);
    markup.close("p");
  }

  /**
   * Writes everything.
   *
   * @param markup where to
   */
  void writeAll(DocMarkup markup) {
    markup.open("p");
    new JavadocWriter(markup).write(body);
    markup.close("p");
    section(markup, "Deprecated", tag -> tag instanceof DeprecatedTree);
    section(markup, "Parameters", tag -> tag instanceof ParamTree);
    section(markup, "Returns", tag -> tag instanceof ReturnTree);
    section(markup, "Throws", tag -> tag instanceof ThrowsTree);
    section(markup, "See also", tag -> tag instanceof SeeTree);
    section(markup, "Since", tag -> tag instanceof SinceTree);
  }

  private void section(DocMarkup markup, String title, Predicate<DocTree> belongs) {
    var entries = tags.stream().filter(belongs).toList();
    if (entries.isEmpty()) {
      return;
    }
    markup.open("p");
    markup.open("b");
    markup.text(title + ":");
    markup.close("b");
    markup.close("p");
    markup.open("ul");
    for (var entry : entries) {
      markup.open("li");
      writeEntry(markup, entry);
      markup.close("li");
    }
    markup.close("ul");
  }

  private static void writeEntry(DocMarkup markup, DocTree tag) {
    var writer = new JavadocWriter(markup);
    if (tag instanceof ParamTree param) {
      var name = param.getName().toString();
      markup.code(param.isTypeParameter() ? "<" + name + ">" : name);
      markup.text(": ");
      writer.write(param.getDescription());
    } else if (tag instanceof ThrowsTree thrown) {
      markup.code(Signatures.shortened(thrown.getExceptionName().getSignature()));
      markup.text(": ");
      writer.write(thrown.getDescription());
    } else if (tag instanceof ReturnTree result) {
      writer.write(result.getDescription());
    } else if (tag instanceof SeeTree see) {
      writer.write(see.getReference());
    } else if (tag instanceof SinceTree since) {
      writer.write(since.getBody());
    } else if (tag instanceof DeprecatedTree deprecated) {
      writer.write(deprecated.getBody());
    } else if (tag instanceof BlockTagTree other) {
      markup.text(other.toString());
    }
  }
}
