package agro.notebook.insight;

import agro.notebook.insight.CellNames.Name;
import agro.notebook.insight.SourceCompiler.Understood;
import com.sun.source.tree.NewClassTree;
import com.sun.source.util.TreePath;
import com.sun.source.util.Trees;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.PackageElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.util.Elements;
import jdk.jshell.JShell;

/** Finds what the name or the call at the cursor stands for. */
final class InspectionSearch {

  private final JShell shell;
  private final SourceCompiler compiler;

  InspectionSearch(JShell shell, SourceCompiler compiler) {
    this.shell = shell;
    this.compiler = compiler;
  }

  /**
   * A declaration that was found.
   *
   * @param element the declaration
   * @param type its type as seen from the cursor
   * @param understood the file that it was found with
   */
  record Declaration(Element element, TypeMirror type, Understood understood) {

    Elements elements() {
      return understood.task().getElements();
    }

    String signature() {
      return Signatures.inList(element, type);
    }
  }

  /**
   * The declarations at a position.
   *
   * @param code Java, without lines for the notebook
   * @param cursor a position in it
   * @return the declaration, or all of an overloaded name, the one in question first
   */
  List<Declaration> at(String code, int cursor) {
    var word = CursorWord.at(code, cursor);
    if (word.typed().isEmpty() && !word.inText()) {
      var next = JavaTokens.endOfWord(code, cursor);
      word = next > cursor ? CursorWord.at(code, next) : word;
    }
    if (word.to() > word.from() && !JavaWords.isReserved(code.substring(word.from(), word.to()))) {
      var found = named(code, word.from(), word.to(), Optional.empty());
      if (!found.isEmpty()) {
        return found;
      }
    }
    return CallAtCursor.at(code, cursor)
        .map(call -> named(code, call.name().start(), call.name().end(), Optional.of(call)))
        .orElse(List.of());
  }

  private List<Declaration> named(String code, int from, int to, Optional<CallAtCursor> call) {
    var name = code.substring(from, to);
    var parts = CellParts.of(code);
    var part = CellParts.around(parts, from);
    var whole = SessionText.of(shell, code, parts, part, "", part.end());
    var seen = resolved(compiler.analyzed(whole.text()), from + whole.shift());
    var resolved = seen.filter(one -> one.element() instanceof ExecutableElement);
    if (seen.isPresent() && resolved.isEmpty() && call.isEmpty()) {
      return List.of(seen.get());
    }
    var word = CursorWord.at(code, to);
    var marked = SessionText.of(shell, code, parts, part, CellNames.MARK, from);
    var understood = compiler.analyzed(marked.text());
    var found = new ArrayList<Declaration>();
    CellNames.at(understood).map(names -> names.names(false)).stream()
        .flatMap(List::stream)
        .filter(one -> one.element().getSimpleName().contentEquals(name))
        .forEach(
            one -> found.addAll(declarations(one, understood, word.follows(code, "new"), call)));
    resolved.ifPresent(first -> putFirst(first, found));
    return resolved.isEmpty() && call.isPresent() ? byArguments(found, call.get()) : found;
  }

  private static List<Declaration> declarations(
      Name name, Understood understood, boolean creates, Optional<CallAtCursor> call) {
    var all = new ArrayList<Declaration>();
    var isCalledType = name.element() instanceof TypeElement && call.isPresent();
    if (creates || isCalledType) {
      for (var member : name.element().getEnclosedElements()) {
        if (member.getKind() == ElementKind.CONSTRUCTOR
            && !member.getModifiers().contains(Modifier.PRIVATE)) {
          all.add(new Declaration(member, member.asType(), understood));
        }
      }
    }
    var fits = call.isEmpty() || name.element() instanceof ExecutableElement;
    if (fits || (all.isEmpty() && isCalledType)) {
      all.add(new Declaration(name.element(), name.type(), understood));
    }
    return all;
  }

  private static void putFirst(Declaration first, List<Declaration> all) {
    var signature = first.signature();
    var same =
        all.stream()
            .filter(one -> one.element().toString().equals(first.element().toString()))
            .filter(one -> one.element().getKind() == first.element().getKind())
            .findFirst();
    same.ifPresentOrElse(
        one -> {
          all.remove(one);
          all.add(0, one);
        },
        () -> {
          all.removeIf(one -> one.signature().equals(signature));
          all.add(0, first);
        });
  }

  private static List<Declaration> byArguments(List<Declaration> found, CallAtCursor call) {
    var sorted = new ArrayList<>(found);
    sorted.sort(
        Comparator.comparing(
            one ->
                one.element() instanceof ExecutableElement method && takes(method, call.arguments())
                    ? 0
                    : 1));
    return sorted;
  }

  private static boolean takes(ExecutableElement method, int arguments) {
    return method.isVarArgs() || method.getParameters().size() >= arguments;
  }

  private static Optional<Declaration> resolved(Understood understood, int at) {
    var trees = Trees.instance(understood.task());
    return TreeFinder.around(understood.unit(), trees.getSourcePositions(), at)
        .flatMap(path -> elementAt(trees, path))
        .filter(element -> element.asType().getKind() != TypeKind.ERROR)
        .filter(element -> isReal(element, understood.task().getElements()))
        .filter(element -> !element.getSimpleName().contentEquals(SessionText.METHOD))
        .map(element -> new Declaration(element, seen(understood, trees, element, at), understood));
  }

  /** An unknown name looks like a package to the compiler. */
  private static boolean isReal(Element element, Elements elements) {
    return !(element instanceof PackageElement)
        || elements.getPackageElement(element.toString()) != null;
  }

  private static Optional<Element> elementAt(Trees trees, TreePath path) {
    var parent = path.getParentPath();
    if (parent != null
        && parent.getLeaf() instanceof NewClassTree creation
        && creation.getIdentifier() == path.getLeaf()) {
      var constructor = trees.getElement(parent);
      if (constructor != null && constructor.getKind() == ElementKind.CONSTRUCTOR) {
        return Optional.of(constructor);
      }
    }
    return Optional.ofNullable(trees.getElement(path));
  }

  /** The type of an element where it stands, with type arguments filled in. */
  private static TypeMirror seen(Understood understood, Trees trees, Element element, int at) {
    var path = TreeFinder.around(understood.unit(), trees.getSourcePositions(), at);
    var type = path.map(trees::getTypeMirror).orElse(null);
    var usable = type != null && type.getKind() == element.asType().getKind();
    var plain = !(element instanceof TypeElement) && type instanceof DeclaredType;
    return usable && (plain || element instanceof ExecutableElement) ? type : element.asType();
  }
}
