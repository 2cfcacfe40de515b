package agro.notebook.kernel;

import agro.notebook.display.MimeBundle;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How a cell ended. What it printed and showed on the way went to its {@link OutputSink}.
 *
 * @param value the value of its last expression
 * @param failure what went wrong, if anything did
 * @param remarks sentences the reader should know, each also printed to the error stream: which
 *     variables were reset, which declarations wait for others
 * @param declared the variables that the cell declared, in order
 */
public record CellResult(
    Value value,
    Optional<CellFailure> failure,
    List<String> remarks,
    List<DeclaredVariable> declared) {

  /** Makes the lists immutable. */
  public CellResult {
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(failure, "failure");
    remarks = List.copyOf(remarks);
    declared = List.copyOf(declared);
  }

  /**
   * Whether the cell ran to its end.
   *
   * @return true when nothing went wrong
   */
  public boolean succeeded() {
    return failure.isEmpty();
  }

  /**
   * The value of a cell's last expression.
   *
   * @param present whether the cell ended with an expression, not closed by a semicolon
   * @param object the live object, possibly null
   * @param shown how it is shown; empty when it is not
   */
  public record Value(boolean present, Object object, MimeBundle shown) {
    /** A cell that did not end with an expression. */
    public static final Value NONE = new Value(false, null, MimeBundle.EMPTY);

    /** Refuses a value without a bundle. */
    public Value {
      Objects.requireNonNull(shown, "shown");
    }
  }
}
