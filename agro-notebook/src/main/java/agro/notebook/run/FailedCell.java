package agro.notebook.run;

import agro.notebook.kernel.CellFailure;
import agro.report.InputProblem;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/**
 * A cell that failed, as a terminal is told of it.
 *
 * @param place the cell and, when known, the line
 * @param sentence the error
 * @param excerpt the lines of the cell around the failure, the failing one marked
 * @param details all that is known, for somebody who looks for the cause in a library
 */
public record FailedCell(String place, String sentence, List<String> excerpt, String details) {

  /** Makes the excerpt immutable. */
  public FailedCell {
    excerpt = List.copyOf(excerpt);
  }

  static FailedCell of(CellOutcome outcome) {
    var failure = outcome.result().failure().orElseThrow();
    var excerpt = failure.trace().stream().filter(line -> line.matches("(?s)  [ >] .*")).toList();
    return new FailedCell(failure.place().toString(), sentence(failure), excerpt, details(failure));
  }

  /** A problem of the input speaks for itself; other exceptions are called by their name. */
  private static String sentence(CellFailure failure) {
    var named =
        failure.kind() == CellFailure.Kind.EXCEPTION
            && !(failure.thrown().orElse(null) instanceof InputProblem);
    var name = failure.name().substring(failure.name().lastIndexOf('.') + 1);
    return named
        ? name + (failure.message().isEmpty() ? "" : ": " + failure.message())
        : failure.message();
  }

  private static String details(CellFailure failure) {
    var all = new StringWriter();
    failure.trace().forEach(line -> all.append(line).append('\n'));
    failure.thrown().ifPresent(thrown -> printed(thrown, all));
    return all.toString();
  }

  /** The exception is the user's own class and may fail while it describes itself. */
  private static void printed(Throwable thrown, StringWriter all) {
    try {
      thrown.printStackTrace(new PrintWriter(all, true));
    } catch (RuntimeException | Error silent) {
      all.append(thrown.getClass().getName()).append(", which cannot be printed\n");
    }
  }

  /**
   * Where and what, on one line.
   *
   * @param notebook how to call the notebook
   * @return for example {@code season.ipynb, cell 3, line 2: ArithmeticException: / by zero}
   */
  public String headline(String notebook) {
    return notebook + ", " + place + ": " + sentence.lines().findFirst().orElse("");
  }
}
