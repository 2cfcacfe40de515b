package agro.notebook.command;

import agro.notebook.kernel.CellFailure;
import agro.notebook.run.CellOutcome;
import agro.notebook.run.NotebookRun;
import agro.report.InputProblem;
import java.util.List;

/** A notebook whose run ended at a cell that failed. */
final class NotebookFailure extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient CellFailure failure;

  private NotebookFailure(String message, CellFailure failure) {
    super(message, failure.thrown().orElse(null));
    this.failure = failure;
  }

  static NotebookFailure of(NotebookRun run, CellOutcome outcome) {
    var failure = outcome.result().failure().orElseThrow();
    return new NotebookFailure(
        run.notebook().name() + ", " + failure.place() + ": " + sentence(failure), failure);
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

  /** The lines of the cell around the failure. */
  List<String> excerpt() {
    return failure.trace().stream().filter(line -> line.matches("(?s)  [ >] .*")).toList();
  }

  List<String> details() {
    return failure.trace();
  }
}
