package agro.notebook.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What went wrong in a cell.
 *
 * @param kind at which stage
 * @param name the class of the exception, or a short name of the trouble
 * @param message what it said; possibly empty, possibly several lines
 * @param place where in the cell
 * @param trace the whole story for the reader, line by line: what, where with the line marked, and
 *     through which calls
 * @param thrown the live exception; empty when none was thrown
 * @param hint what to do about it, in one or two sentences; also the last line of the trace
 */
public record CellFailure(
    Kind kind,
    String name,
    String message,
    Place place,
    List<String> trace,
    Optional<Throwable> thrown,
    Optional<String> hint) {

  /** What the line of a trace begins with that says what to do. */
  static final String HINT = "Hint: ";

  /** The stage at which a cell failed. */
  public enum Kind {
    /** The compiler refused it; nothing of the refused statement ran. */
    COMPILATION,
    /** The code threw an exception. */
    EXCEPTION,
    /** The code used a declaration that waits for something not yet declared. */
    UNRESOLVED,
    /** The reader stopped it. */
    INTERRUPTED,
    /** The evaluator itself could not go on with this cell. */
    EVALUATOR
  }

  /**
   * A place in a cell.
   *
   * @param cell how messages call the cell
   * @param line line counted from 1, or 0 when unknown
   */
  public record Place(String cell, int line) {
    /**
     * The line.
     *
     * @return empty when unknown
     */
    public OptionalInt knownLine() {
      return line > 0 ? OptionalInt.of(line) : OptionalInt.empty();
    }

    @Override
    public String toString() {
      return line > 0 ? cell + ", line " + line : cell;
    }
  }

  /**
   * A failure without a hint.
   *
   * @param kind at which stage
   * @param name the class of the exception, or a short name of the trouble
   * @param message what it said
   * @param place where in the cell
   * @param trace the whole story, line by line
   * @param thrown the live exception; empty when none was thrown
   */
  public CellFailure(
      Kind kind,
      String name,
      String message,
      Place place,
      List<String> trace,
      Optional<Throwable> thrown) {
    this(kind, name, message, place, trace, thrown, Optional.empty());
  }

  /**
   * This failure with a hint, if there is one.
   *
   * @param found what to do about it
   * @return the failure, the hint as the last line of its trace
   */
  CellFailure hinted(Optional<String> found) {
    if (found.isEmpty()) {
      return this;
    }
    var lines = new ArrayList<>(trace);
    lines.add(HINT + found.get());
    return new CellFailure(kind, name, message, place, lines, thrown, found);
  }

  /** Makes the trace immutable. */
  public CellFailure {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(message, "message");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(thrown, "thrown");
    Objects.requireNonNull(hint, "hint");
    trace = List.copyOf(trace);
  }
}
