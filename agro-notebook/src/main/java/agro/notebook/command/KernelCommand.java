package agro.notebook.command;

import agro.notebook.jupyter.JupyterKernel;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs the Jupyter kernel; front ends call it. */
@Command(
    name = "kernel",
    mixinStandardHelpOptions = true,
    description =
        "Run cells for a Jupyter front end, which starts this command itself. Set AGRO_HISTORY=off"
            + " to keep no history of cells in a file.")
final class KernelCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "CONNECTION_FILE",
      description = "The file in which the front end says where to listen.")
  private String connectionFile;

  @Override
  public Integer call() {
    return JupyterKernel.run(connectionFile, spec.commandLine().getErr());
  }
}
