package agro.notebook.kernel;

import java.util.List;
import java.util.Set;

/**
 * A convenience that a cell calls by name where a statement may begin, at the beginning of a line:
 * {@code %name arguments}, or {@code %%name arguments} on the first line for the whole cell. Found
 * through {@link CellMagicLibrary}.
 */
public interface CellMagic {

  /** How a magic is called. */
  enum Form {
    /** {@code %name arguments}, which takes the rest of its line. */
    LINE("%"),
    /** {@code %%name arguments} on the first line, which takes the rest of the cell too. */
    CELL("%%");

    private final String mark;

    Form(String mark) {
      this.mark = mark;
    }

    /**
     * What stands before the name.
     *
     * @return one or two per cent signs
     */
    public String mark() {
      return mark;
    }
  }

  /**
   * The name, without per cent signs.
   *
   * @return letters, digits and underlines; begins with a letter
   */
  String name();

  /**
   * Other names for the same thing.
   *
   * @return possibly none
   */
  default List<String> aliases() {
    return List.of();
  }

  /**
   * How it may be called.
   *
   * @return at least one form
   */
  Set<Form> forms();

  /**
   * What stands behind the name.
   *
   * @return a pattern such as {@code group:artifact:version ...}; possibly empty
   */
  String arguments();

  /**
   * What it does.
   *
   * @return one line
   */
  String summary();

  /**
   * Does its work on the thread of the cells, where it may print and show things and is interrupted
   * like any cell. What only the evaluator can do, such as evaluating code, it asks for in its
   * answer.
   *
   * @param call what the cell wrote
   * @param context what is known of the evaluator
   * @return what the evaluator has to do next
   * @throws CellMagicProblem when it cannot do what was asked; the message says what to do
   * @throws Exception anything else, which the reader sees as a failure of the cell
   */
  CellMagicAnswer run(CellMagicCall call, CellMagicContext context) throws Exception;
}
