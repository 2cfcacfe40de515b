package agro.notebook.command;

import agro.notebook.run.WorkerProcess;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Runs one notebook for another process of this program, which asks for it and listens. */
@Command(name = RunWorkerCommand.NAME, hidden = true, description = "Started by run itself.")
final class RunWorkerCommand implements Callable<Integer> {

  static final String NAME = "worker-of-this-program";

  /** The arguments that start this command. */
  static List<String> arguments() {
    return List.of("run", NAME);
  }

  @Override
  public Integer call() throws IOException {
    var reports = System.out;
    // What a library prints past the cell must not stand between the reports.
    System.setOut(System.err);
    return WorkerProcess.work(System.in, reports);
  }
}
