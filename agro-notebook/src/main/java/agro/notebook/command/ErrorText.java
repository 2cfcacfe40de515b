package agro.notebook.command;

import agro.report.InputProblem;
import java.io.PrintWriter;
import java.io.UncheckedIOException;

/** What the reader of a terminal is told of an error: sentences, never a trace unless asked for. */
final class ErrorText {

  private ErrorText() {}

  static void print(Throwable trouble, boolean withTrace, PrintWriter err) {
    if (trouble instanceof InputProblem) {
      err.println(trouble.getMessage());
    } else if (trouble instanceof UncheckedIOException) {
      err.println(trouble.getMessage() + ": " + trouble.getCause().getMessage());
    } else {
      err.println("This was not foreseen: " + trouble);
      err.println("  With --trace the program says where it happened.");
    }
    if (withTrace) {
      trouble.printStackTrace(err);
    }
    err.flush();
  }
}
