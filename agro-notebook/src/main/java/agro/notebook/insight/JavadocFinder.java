package agro.notebook.insight;

import agro.notebook.insight.SourceCompiler.Understood;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.TreePath;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.util.Elements;

/** Finds the documentation comments of declarations in their source files. */
final class JavadocFinder {

  private static final int KEPT_FILES = 16;

  private final SourceCompiler compiler;
  private final SourceArchive archive;
  private final Map<String, Optional<Understood>> files =
      new LinkedHashMap<>(KEPT_FILES, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Optional<Understood>> eldest) {
          return size() > KEPT_FILES;
        }
      };

  JavadocFinder(SourceCompiler compiler, SourceArchive archive) {
    this.compiler = compiler;
    this.archive = archive;
  }

  /**
   * What a source file says about a declaration.
   *
   * @param javadoc its comment, if it has one
   * @param parameterNames the names of its parameters; empty when unknown
   */
  record Found(Optional<Javadoc> javadoc, List<String> parameterNames) {

    static final Found NOTHING = new Found(Optional.empty(), List.of());

    /** Makes the list immutable. */
    Found {
      parameterNames = List.copyOf(parameterNames);
    }
  }

  /**
   * The documentation of a declaration, its own or that of the method it overrides.
   *
   * @param element a type, method, constructor or field
   * @param elements the compiler's view of its library
   * @return what was found
   */
  Found find(Element element, Elements elements) {
    var own = findOwn(element, elements);
    if (own.javadoc().isPresent() || !(element instanceof ExecutableElement method)) {
      return own;
    }
    var inherited =
        overridden(method, elements).stream()
            .flatMap(other -> findOwn(other, elements).javadoc().stream())
            .findFirst();
    return new Found(inherited, own.parameterNames());
  }

  private static List<ExecutableElement> overridden(ExecutableElement method, Elements elements) {
    var found = new ArrayList<ExecutableElement>();
    if (method.getKind() == ElementKind.METHOD
        && method.getEnclosingElement() instanceof TypeElement type) {
      for (var parent : elements.getAllMembers(type)) {
        if (parent instanceof ExecutableElement other
            && !other.equals(method)
            && elements.overrides(method, other, type)) {
          found.add(other);
        }
      }
      Parents.of(type)
          .forEach(
              parent ->
                  parent.getEnclosedElements().stream()
                      .filter(member -> member instanceof ExecutableElement)
                      .map(ExecutableElement.class::cast)
                      .filter(other -> elements.overrides(method, other, type))
                      .forEach(found::add));
    }
    return found;
  }

  private Found findOwn(Element element, Elements elements) {
    var types = new ArrayList<TypeElement>();
    for (var at = element; at != null; at = at.getEnclosingElement()) {
      if (at instanceof TypeElement type) {
        types.add(0, type);
      }
    }
    if (types.isEmpty()) {
      return Found.NOTHING;
    }
    var module = elements.getModuleOf(element);
    var moduleName = module == null ? "" : module.getQualifiedName().toString();
    return file(moduleName, types.get(0).getQualifiedName().toString())
        .flatMap(file -> pathTo(file, types).map(path -> found(file, path, element)))
        .orElse(Found.NOTHING);
  }

  private Optional<Understood> file(String module, String fullName) {
    var known = files.get(fullName);
    if (known == null) {
      known = archive.source(module, fullName).map(compiler::parsed);
      files.put(fullName, known);
    }
    return known;
  }

  private static Optional<TreePath> pathTo(Understood file, List<TypeElement> types) {
    var path = new TreePath(file.unit());
    List<? extends Tree> members = file.unit().getTypeDecls();
    for (var type : types) {
      var found =
          members.stream()
              .filter(tree -> tree instanceof ClassTree)
              .map(ClassTree.class::cast)
              .filter(tree -> tree.getSimpleName().contentEquals(type.getSimpleName()))
              .findFirst();
      if (found.isEmpty()) {
        return Optional.empty();
      }
      path = new TreePath(path, found.get());
      members = found.get().getMembers();
    }
    return Optional.of(path);
  }

  private static Found found(Understood file, TreePath type, Element element) {
    var trees = DocTrees.instance(file.task());
    var ofType = Optional.ofNullable(trees.getDocCommentTree(type)).map(Javadoc::of);
    if (element instanceof TypeElement) {
      return new Found(ofType, List.of());
    }
    for (var member : ((ClassTree) type.getLeaf()).getMembers()) {
      if (declares(member, element)) {
        var own =
            Optional.ofNullable(trees.getDocCommentTree(new TreePath(type, member)))
                .map(Javadoc::of);
        var javadoc =
            isCompact(file, member)
                ? ofComponent(ofType, element)
                : own.or(() -> ofComponent(ofType, element));
        return new Found(javadoc, parameterNames(member));
      }
    }
    return new Found(ofComponent(ofType, element), List.of());
  }

  /** What a compact constructor checks is no description of its parameters. */
  private static boolean isCompact(Understood file, Tree member) {
    var positions = DocTrees.instance(file.task()).getSourcePositions();
    return member instanceof MethodTree method
        && method.getReturnType() == null
        && !method.getParameters().isEmpty()
        && positions.getStartPosition(file.unit(), method.getParameters().get(0))
            < positions.getStartPosition(file.unit(), method);
  }

  private static Optional<Javadoc> ofComponent(Optional<Javadoc> ofType, Element element) {
    if (element.getEnclosingElement().getKind() != ElementKind.RECORD) {
      return Optional.empty();
    }
    return element.getKind() == ElementKind.CONSTRUCTOR
        ? ofType.map(Javadoc::tagsOnly)
        : ofType.flatMap(javadoc -> javadoc.component(element.getSimpleName().toString()));
  }

  private static List<String> parameterNames(Tree member) {
    return member instanceof MethodTree method
        ? method.getParameters().stream().map(one -> one.getName().toString()).toList()
        : List.of();
  }

  private static boolean declares(Tree member, Element element) {
    if (member instanceof MethodTree method && element instanceof ExecutableElement wanted) {
      return method.getName().contentEquals(wanted.getSimpleName())
          && sameParameters(method, wanted);
    }
    return member instanceof VariableTree field
        && !(element instanceof ExecutableElement)
        && field.getName().contentEquals(element.getSimpleName());
  }

  private static boolean sameParameters(MethodTree method, ExecutableElement wanted) {
    var parameters = wanted.getParameters();
    if (parameters.size() != method.getParameters().size()) {
      return false;
    }
    for (var index = 0; index < parameters.size(); index++) {
      var written = method.getParameters().get(index).getType();
      if (!bare(parameters.get(index).asType().toString()).equals(bare(String.valueOf(written)))) {
        return false;
      }
    }
    return true;
  }

  /** A type without type arguments, annotations and packages. */
  private static String bare(String type) {
    var text = type.replace("...", "[]");
    for (var before = ""; !before.equals(text); ) {
      before = text;
      text = text.replaceAll("<[^<>]*>", "");
    }
    text = text.replaceAll("@[\\w.]+(?:\\([^)]*\\))?\\s*", "").strip();
    return text.substring(text.lastIndexOf('.') + 1);
  }
}
