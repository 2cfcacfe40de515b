package agro.notebook.insight;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ErroneousTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MemberReferenceTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.util.Optional;

/** Finds places in a tree. */
final class TreeFinder {

  private TreeFinder() {}

  /**
   * The tree that introduces or uses a name which stands nowhere else.
   *
   * @param unit a source file
   * @param name the name
   * @return the path to the identifier, selection, member reference or variable of that name
   */
  static Optional<TreePath> named(CompilationUnitTree unit, String name) {
    var found = new TreePath[1];
    new TreePathScanner<Void, Void>() {
      @Override
      public Void visitErroneous(ErroneousTree tree, Void nothing) {
        return scan(tree.getErrorTrees(), null);
      }

      @Override
      public Void visitIdentifier(IdentifierTree tree, Void nothing) {
        return note(tree.getName().contentEquals(name));
      }

      @Override
      public Void visitMemberSelect(MemberSelectTree tree, Void nothing) {
        note(tree.getIdentifier().contentEquals(name));
        return super.visitMemberSelect(tree, null);
      }

      @Override
      public Void visitMemberReference(MemberReferenceTree tree, Void nothing) {
        note(tree.getName() != null && tree.getName().contentEquals(name));
        return super.visitMemberReference(tree, null);
      }

      @Override
      public Void visitVariable(VariableTree tree, Void nothing) {
        note(tree.getName() != null && tree.getName().contentEquals(name));
        return super.visitVariable(tree, null);
      }

      private Void note(boolean isIt) {
        if (isIt && found[0] == null) {
          found[0] = getCurrentPath();
        }
        return null;
      }
    }.scan(unit, null);
    return Optional.ofNullable(found[0]);
  }

  /**
   * The smallest tree around a position.
   *
   * @param unit a source file
   * @param positions where its trees stand
   * @param at the position of a letter
   * @return the path to the tree
   */
  static Optional<TreePath> around(CompilationUnitTree unit, SourcePositions positions, int at) {
    var found = new TreePath[1];
    new TreePathScanner<Void, Void>() {
      @Override
      public Void visitErroneous(ErroneousTree tree, Void nothing) {
        return scan(tree.getErrorTrees(), null);
      }

      @Override
      public Void scan(Tree tree, Void nothing) {
        if (tree != null
            && positions.getStartPosition(unit, tree) <= at
            && at < positions.getEndPosition(unit, tree)) {
          found[0] =
              new TreePath(getCurrentPath() == null ? new TreePath(unit) : getCurrentPath(), tree);
          super.scan(tree, null);
        }
        return null;
      }
    }.scan(new TreePath(unit), null);
    return Optional.ofNullable(found[0]);
  }
}
