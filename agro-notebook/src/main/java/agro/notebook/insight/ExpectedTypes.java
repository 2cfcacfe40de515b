package agro.notebook.insight;

import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CaseTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.DoWhileLoopTree;
import com.sun.source.tree.ErroneousTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.IfTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.ReturnTree;
import com.sun.source.tree.SwitchExpressionTree;
import com.sun.source.tree.SwitchTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.UnaryTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.tree.WhileLoopTree;
import com.sun.source.util.TreePath;
import java.util.ArrayList;
import java.util.List;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.ArrayType;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.ExecutableType;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;

/** The types that a value should have at one place of a cell. */
final class ExpectedTypes {

  private final CellNames names;

  ExpectedTypes(CellNames names) {
    this.names = names;
  }

  /**
   * The types that would fit at the mark.
   *
   * @return one for most places, several for the arguments of an overloaded method, none when any
   *     type would do
   */
  List<TypeMirror> atMark() {
    var types = new ArrayList<TypeMirror>();
    for (var type : expected(names.place())) {
      if (type != null && isUsable(type)) {
        types.add(type.getKind() == TypeKind.TYPEVAR ? names.types().erasure(type) : type);
      }
    }
    types.removeIf(type -> type.toString().equals("java.lang.Object"));
    return types;
  }

  /**
   * Whether a compiler can compare a type with others. What it puts in place of a type that it
   * could not find out leads it into an endless recursion.
   *
   * @param type any type
   * @return true for primitive types, classes, arrays and type variables
   */
  static boolean isUsable(TypeMirror type) {
    return type.getKind().isPrimitive()
        || type.getKind() == TypeKind.DECLARED
        || type.getKind() == TypeKind.ARRAY
        || type.getKind() == TypeKind.TYPEVAR;
  }

  private List<TypeMirror> expected(TreePath path) {
    var parent = path.getParentPath();
    var leaf = path.getLeaf();
    if (parent == null) {
      return List.of();
    }
    var tree = parent.getLeaf();
    if (tree instanceof NewClassTree creation && creation.getIdentifier() != leaf) {
      return ofConstructor(parent, creation, creation.getArguments().indexOf(leaf));
    }
    if (tree instanceof MethodInvocationTree call && call.getMethodSelect() != leaf) {
      return ofCall(parent, call, call.getArguments().indexOf(leaf));
    }
    if (tree instanceof ParenthesizedTree
        || tree instanceof NewClassTree
        || tree instanceof ErroneousTree
        || isLabel(tree)
        || tree instanceof MethodInvocationTree
        || (tree instanceof ConditionalExpressionTree choice && choice.getCondition() != leaf)) {
      return expected(parent);
    }
    return ofPlace(parent, leaf);
  }

  /** Newer compilers put a label between a case and its constant, which JDK 17 does not know. */
  static boolean isLabel(Tree tree) {
    return tree.getKind().name().equals("CONSTANT_CASE_LABEL");
  }

  private List<TypeMirror> ofPlace(TreePath parent, Tree leaf) {
    var tree = parent.getLeaf();
    if (tree instanceof VariableTree variable && variable.getInitializer() == leaf) {
      var type = variable.getType();
      return type == null ? List.of() : typeOf(parent, type);
    }
    if (tree instanceof AssignmentTree assignment && assignment.getExpression() == leaf) {
      return typeOf(parent, assignment.getVariable());
    }
    if (tree instanceof BinaryTree binary && comparesEqual(binary)) {
      var other =
          binary.getLeftOperand() == leaf ? binary.getRightOperand() : binary.getLeftOperand();
      return typeOf(parent, other);
    }
    if (tree instanceof CaseTree) {
      return ofSwitch(parent.getParentPath());
    }
    if (tree instanceof ReturnTree) {
      return ofReturn(parent);
    }
    var condition =
        tree instanceof IfTree
            || tree instanceof WhileLoopTree
            || tree instanceof DoWhileLoopTree
            || tree instanceof ConditionalExpressionTree
            || (tree instanceof UnaryTree unary && unary.getKind() == Tree.Kind.LOGICAL_COMPLEMENT);
    return condition ? List.of(names.types().getPrimitiveType(TypeKind.BOOLEAN)) : List.of();
  }

  private static boolean comparesEqual(BinaryTree binary) {
    return binary.getKind() == Tree.Kind.EQUAL_TO || binary.getKind() == Tree.Kind.NOT_EQUAL_TO;
  }

  private List<TypeMirror> typeOf(TreePath parent, Tree tree) {
    var type = names.trees().getTypeMirror(new TreePath(parent, tree));
    return type == null ? List.of() : List.of(type);
  }

  private List<TypeMirror> ofSwitch(TreePath path) {
    ExpressionTree selector = null;
    if (path.getLeaf() instanceof SwitchTree tree) {
      selector = tree.getExpression();
    } else if (path.getLeaf() instanceof SwitchExpressionTree tree) {
      selector = tree.getExpression();
    }
    var plain = selector instanceof ParenthesizedTree inside ? inside.getExpression() : selector;
    return plain == null ? List.of() : typeOf(new TreePath(path, selector), plain);
  }

  private List<TypeMirror> ofReturn(TreePath path) {
    for (var at = path; at != null; at = at.getParentPath()) {
      if (at.getLeaf() instanceof MethodTree method) {
        var type = method.getReturnType();
        return type == null || method.getName().contentEquals(SessionText.METHOD)
            ? List.of()
            : typeOf(at, type);
      }
      if (at.getLeaf() instanceof LambdaExpressionTree) {
        return List.of();
      }
    }
    return List.of();
  }

  private List<TypeMirror> ofConstructor(TreePath path, NewClassTree creation, int index) {
    var type = names.trees().getTypeMirror(new TreePath(path, creation.getIdentifier()));
    if (!(type instanceof DeclaredType declared)
        || !(declared.asElement() instanceof TypeElement element)) {
      return List.of();
    }
    var fitting = new ArrayList<TypeMirror>();
    for (var member : element.getEnclosedElements()) {
      if (member.getKind() == ElementKind.CONSTRUCTOR) {
        addParameter(fitting, member.asType(), index);
      }
    }
    return fitting;
  }

  private List<TypeMirror> ofCall(TreePath path, MethodInvocationTree call, int index) {
    var fitting = new ArrayList<TypeMirror>();
    var select = call.getMethodSelect();
    if (select instanceof MemberSelectTree member) {
      var receiver = new TreePath(new TreePath(path, member), member.getExpression());
      var type = names.trees().getTypeMirror(receiver);
      if (type != null) {
        for (var name : names.membersOf(type)) {
          addParameterOf(fitting, name.element(), name.type(), member.getIdentifier(), index);
        }
      }
    } else if (select instanceof IdentifierTree identifier) {
      for (var name : names.inSight()) {
        addParameterOf(fitting, name.element(), name.type(), identifier.getName(), index);
      }
    }
    return fitting;
  }

  private static void addParameterOf(
      List<TypeMirror> fitting, Element method, TypeMirror type, CharSequence name, int index) {
    if (method.getKind() == ElementKind.METHOD && method.getSimpleName().contentEquals(name)) {
      addParameter(fitting, type, index);
    }
  }

  private static void addParameter(List<TypeMirror> fitting, TypeMirror method, int index) {
    if (method instanceof ExecutableType call && index >= 0) {
      var parameters = call.getParameterTypes();
      if (index < parameters.size()) {
        fitting.add(parameters.get(index));
      } else if (!parameters.isEmpty()
          && parameters.get(parameters.size() - 1) instanceof ArrayType rest) {
        fitting.add(rest.getComponentType());
      }
    }
  }
}
