package agro.notebook.command;

import agro.report.Progress;
import java.io.PrintWriter;

/**
 * Progress as one line for each part of the work, which reads the same on a terminal and in a file.
 */
final class PhaseProgress implements Progress {

  private final PrintWriter err;
  private String phase = "";

  PhaseProgress(PrintWriter err) {
    this.err = err;
  }

  @Override
  public boolean tell(String what, long done, long total) {
    if (!what.equals(phase)) {
      phase = what;
      err.println(what + " ...");
      err.flush();
    }
    return !Thread.currentThread().isInterrupted();
  }
}
