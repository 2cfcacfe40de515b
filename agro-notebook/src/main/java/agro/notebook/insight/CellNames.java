package agro.notebook.insight;

import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.Scope;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreePath;
import com.sun.source.util.Trees;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.PackageElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.ArrayType;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.ExecutableType;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.type.TypeVariable;
import javax.lang.model.util.Elements;
import javax.lang.model.util.Types;

/** The names that could stand at one place of a cell. */
final class CellNames {

  /** A name that nobody writes; it stands where names are asked for. */
  static final String MARK = "here$mark$";

  private final Trees trees;
  private final Elements elements;
  private final Types types;
  private final TreePath place;

  private CellNames(SourceCompiler.Understood understood, TreePath place) {
    this.trees = Trees.instance(understood.task());
    this.elements = understood.task().getElements();
    this.types = understood.task().getTypes();
    this.place = place;
  }

  /**
   * The names at the mark.
   *
   * @param understood a file with the mark in it
   * @return empty when the mark stands where no name can
   */
  static Optional<CellNames> at(SourceCompiler.Understood understood) {
    return TreeFinder.named(understood.unit(), MARK).map(path -> new CellNames(understood, path));
  }

  /**
   * A name that could stand there.
   *
   * @param element what it stands for
   * @param seen its type as a member of what stands before the dot; empty without a dot
   * @param distance how far away it is declared: 0 for the nearest
   */
  record Name(Element element, Optional<TypeMirror> seen, int distance) {

    /** Its type as seen from there; reads the class file of a type that was only listed so far. */
    TypeMirror type() {
      return seen.orElseGet(element::asType);
    }
  }

  TreePath place() {
    return place;
  }

  Trees trees() {
    return trees;
  }

  Elements elements() {
    return elements;
  }

  Types types() {
    return types;
  }

  /** Whether the mark gives a name to something new. */
  boolean isNewName() {
    return place.getLeaf() instanceof VariableTree;
  }

  /**
   * The names that could stand there.
   *
   * @return the members of what stands before the dot, or everything in sight
   */
  List<Name> names() {
    return names(false);
  }

  /**
   * The names that could stand there.
   *
   * @param anyMember whether methods of objects may follow the name of their type, as in a method
   *     reference
   * @return the members of what stands before the dot, or everything in sight
   */
  List<Name> names(boolean anyMember) {
    if (place.getLeaf() instanceof MemberSelectTree select) {
      return membersOf(new TreePath(place, select.getExpression()), anyMember);
    }
    return inSight();
  }

  /** The package that stands before the dot, if it is one. */
  Optional<PackageElement> packageBefore() {
    return place.getLeaf() instanceof MemberSelectTree select
            && trees.getElement(new TreePath(place, select.getExpression()))
                instanceof PackageElement found
        ? Optional.of(found)
        : Optional.empty();
  }

  private List<Name> membersOf(TreePath receiver, boolean anyMember) {
    var element = trees.getElement(receiver);
    if (element instanceof PackageElement inPackage) {
      return inPackage.getEnclosedElements().stream()
          .filter(type -> type.getModifiers().contains(Modifier.PUBLIC))
          .map(type -> new Name(type, Optional.empty(), 0))
          .toList();
    }
    var type = trees.getTypeMirror(receiver);
    var onType = element instanceof TypeElement;
    return type == null
        ? List.of()
        : membersOf(type).stream()
            .filter(name -> anyMember || onType == belongsToType(name.element()))
            .toList();
  }

  private static boolean belongsToType(Element member) {
    return member.getModifiers().contains(Modifier.STATIC)
        || member.getKind().isClass()
        || member.getKind().isInterface();
  }

  /**
   * The members of a type that may be used here.
   *
   * @param type any type
   * @return methods, fields and types, inherited ones too; constructors left out
   */
  List<Name> membersOf(TypeMirror type) {
    var names = new ArrayList<Name>();
    if (type instanceof ArrayType) {
      return membersOf(elements.getTypeElement("java.lang.Object").asType());
    }
    var declared = upperBound(type);
    if (declared == null) {
      return names;
    }
    var scope = trees.getScope(place);
    for (var member : elements.getAllMembers((TypeElement) declared.asElement())) {
      if (member.getKind() != ElementKind.CONSTRUCTOR
          && isNamed(member)
          && trees.isAccessible(scope, member, declared)
          && !isHiddenFromCells(member, scope)) {
        names.add(
            new Name(member, Optional.of(asMember(declared, member)), distance(member, declared)));
      }
    }
    return names;
  }

  /** The shell keeps the declarations of cells apart, so what is private in one is so to others. */
  private static boolean isHiddenFromCells(Element member, Scope scope) {
    if (!member.getModifiers().contains(Modifier.PRIVATE)) {
      return false;
    }
    for (var at = scope; at != null; at = at.getEnclosingScope()) {
      if (member.getEnclosingElement().equals(at.getEnclosingClass())) {
        return false;
      }
    }
    return true;
  }

  /** Whether what stands before the dot is an array, whose length is no field that is declared. */
  boolean isAfterArray() {
    return place.getLeaf() instanceof MemberSelectTree select
        && trees.getTypeMirror(new TreePath(place, select.getExpression())) instanceof ArrayType;
  }

  private static boolean isNamed(Element member) {
    return Character.isJavaIdentifierStart(member.getSimpleName().toString().codePointAt(0));
  }

  private static int distance(Element member, DeclaredType type) {
    var owner = member.getEnclosingElement();
    return owner.equals(type.asElement()) ? 0 : owner.toString().equals("java.lang.Object") ? 2 : 1;
  }

  /** What a type is at least, where it is a variable or a choice of types. */
  private DeclaredType upperBound(TypeMirror type) {
    if (type instanceof DeclaredType declared) {
      return declared;
    }
    if (type instanceof TypeVariable variable) {
      return upperBound(variable.getUpperBound());
    }
    return switch (type.getKind()) {
      case UNION, INTERSECTION ->
          types.directSupertypes(type).stream()
              .map(this::upperBound)
              .filter(bound -> bound != null)
              .findFirst()
              .orElse(null);
      default -> null;
    };
  }

  private TypeMirror asMember(DeclaredType type, Element member) {
    try {
      return types.asMemberOf(type, member);
    } catch (IllegalArgumentException notOfThisType) {
      return member.asType();
    }
  }

  /** Everything that may be named here without a dot, the nearest first. */
  List<Name> inSight() {
    Set<Element> seen = new LinkedHashSet<>();
    var declared = beingDeclared();
    var names = new ArrayList<Name>();
    var distance = 0;
    for (var scope = trees.getScope(place); scope != null; scope = scope.getEnclosingScope()) {
      for (var element : declaredIn(scope)) {
        var isNew =
            declared.contains(element.getSimpleName().toString())
                && element.getKind() == ElementKind.LOCAL_VARIABLE;
        if (isOfReader(element) && !isNew && seen.add(element)) {
          names.add(new Name(element, Optional.empty(), distance));
        }
      }
      distance++;
    }
    return names;
  }

  /** The names of the variables whose first values the place stands in. */
  private Set<String> beingDeclared() {
    var found = new HashSet<String>();
    for (var at = place; at != null; at = at.getParentPath()) {
      if (at.getLeaf() instanceof VariableTree variable) {
        found.add(variable.getName().toString());
      }
    }
    return found;
  }

  private static List<Element> declaredIn(Scope scope) {
    var found = new ArrayList<Element>();
    scope.getLocalElements().forEach(found::add);
    var outer = scope.getEnclosingScope();
    if (outer != null
        && scope.getEnclosingClass() != null
        && !scope.getEnclosingClass().equals(outer.getEnclosingClass())) {
      found.addAll(scope.getEnclosingClass().getEnclosedElements());
    }
    return found;
  }

  private static boolean isOfReader(Element element) {
    var name = element.getSimpleName().toString();
    return !name.isEmpty()
        && isNamed(element)
        && !name.equals(SessionText.CLASS)
        && !name.equals(SessionText.METHOD)
        && !name.equals("Here$")
        && !name.equals(MARK)
        && (!name.equals("this") && !name.equals("super"));
  }

  /**
   * What a value is worth that a name gives.
   *
   * @param name a name
   * @return the type of the variable or of what the method returns
   */
  static TypeMirror valueOf(Name name) {
    return name.type() instanceof ExecutableType call ? call.getReturnType() : name.type();
  }
}
