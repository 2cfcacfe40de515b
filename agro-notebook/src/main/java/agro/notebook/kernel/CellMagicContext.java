package agro.notebook.kernel;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/**
 * What a magic may know of its evaluator.
 *
 * @param magics all magics there are
 * @param declarations what cells have declared so far, in that order
 * @param addedToClassPath the jars and folders that were added to the class path
 */
public record CellMagicContext(
    List<CellMagic> magics, List<Declaration> declarations, List<Path> addedToClassPath) {

  /** Makes the lists immutable. */
  public CellMagicContext {
    magics = List.copyOf(magics);
    declarations = List.copyOf(declarations);
    addedToClassPath = List.copyOf(addedToClassPath);
  }

  /** What can be declared. */
  public enum Kind {
    /** A variable. */
    VARIABLE,
    /** A method. */
    METHOD,
    /** A class, record, enum, interface or annotation. */
    TYPE,
    /** An import. */
    IMPORT
  }

  /**
   * Something that a cell has declared.
   *
   * @param kind what it is
   * @param name its name
   * @param description the type of a variable, the signature of a method, the kind of a type, the
   *     full name of an import
   * @param value the value of a variable; null for all else, and for a variable without a value
   */
  public record Declaration(Kind kind, String name, String description, Object value) {
    /** Refuses a declaration without a name. */
    public Declaration {
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(description, "description");
    }
  }
}
