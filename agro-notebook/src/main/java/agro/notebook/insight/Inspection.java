package agro.notebook.insight;

import agro.notebook.display.MimeBundle;
import agro.notebook.insight.InspectionSearch.Declaration;
import com.sun.source.util.DocTrees;
import java.util.List;
import java.util.Optional;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;

/** Writes what is known about declarations, for reading as plain text and as HTML. */
final class Inspection {

  private static final int MOST = 10;

  private final JavadocFinder finder;
  private final boolean detailed;
  private final StringBuilder plain = new StringBuilder();
  private final StringBuilder html = new StringBuilder();

  Inspection(JavadocFinder finder, boolean detailed) {
    this.finder = finder;
    this.detailed = detailed;
  }

  /**
   * Describes declarations.
   *
   * @param found the declarations, the most wanted first
   * @return a text in two formats; empty when there is nothing to describe
   */
  Optional<MimeBundle> of(List<Declaration> found) {
    if (found.isEmpty()) {
      return Optional.empty();
    }
    found.stream().limit(MOST).forEach(this::describe);
    if (found.size() > MOST) {
      add("... and " + (found.size() - MOST) + " more", "p");
    }
    var text = MimeBundle.text(plain.toString().stripTrailing());
    return Optional.of(text.with(MimeBundle.HTML, "<div>" + html + "</div>"));
  }

  private void describe(Declaration declaration) {
    var element = declaration.element();
    var known = documentation(declaration);
    add(Signatures.declared(element, declaration.type(), known.parameterNames()), "pre");
    var owner = owner(element);
    if (!owner.isEmpty()) {
      add(owner, "p");
    }
    known.javadoc().ifPresent(this::write);
    if (isVariable(element) && known.javadoc().isEmpty()) {
      describeTypeOf(declaration);
    }
    plain.append('\n');
  }

  /** A variable has no comment of its own; that of its type says what it is. */
  private void describeTypeOf(Declaration declaration) {
    if (declaration.type() instanceof DeclaredType declared
        && declared.asElement() instanceof TypeElement type) {
      var known = documentation(new Declaration(type, type.asType(), declaration.understood()));
      if (known.javadoc().isPresent()) {
        add(Signatures.declared(type, type.asType(), List.of()), "pre");
        write(known.javadoc().get());
      }
    }
  }

  private static boolean isVariable(Element element) {
    return !(element instanceof ExecutableElement)
        && !(element instanceof TypeElement)
        && element.getKind() != ElementKind.PACKAGE;
  }

  private void write(Javadoc javadoc) {
    var markup = new DocMarkup();
    if (detailed) {
      javadoc.writeAll(markup);
    } else {
      javadoc.writeFirst(markup);
    }
    markup.finish();
    if (!markup.plain().isEmpty()) {
      plain.append(markup.plain()).append('\n');
      html.append(markup.html());
    }
  }

  private JavadocFinder.Found documentation(Declaration declaration) {
    var trees = DocTrees.instance(declaration.understood().task());
    var inCell = trees.getDocCommentTree(declaration.element());
    return inCell == null
        ? finder.find(declaration.element(), declaration.elements())
        : new JavadocFinder.Found(Optional.of(Javadoc.of(inCell)), List.of());
  }

  private static String owner(Element element) {
    var owner = element.getEnclosingElement();
    if (owner instanceof TypeElement type) {
      var name = type.getQualifiedName().toString();
      if (name.startsWith(SessionText.CLASS)) {
        return "declared in a cell";
      }
      return name.equals("Array") ? "" : "in " + name;
    }
    return element instanceof TypeElement
            || owner == null
            || element.getKind() == ElementKind.PACKAGE
        ? ""
        : "local";
  }

  private void add(String text, String tag) {
    plain.append(text).append('\n');
    var markup = new DocMarkup();
    markup.open(tag);
    markup.text(text);
    markup.finish();
    html.append(markup.html());
  }
}
