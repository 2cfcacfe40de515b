package agro.notebook.command;

import agro.notebook.install.Finding;
import agro.notebook.install.InstallationCheck;
import agro.notebook.install.JupyterProgram;
import agro.notebook.install.Surroundings;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Says what is wrong with an installation of the kernel, and how to mend it. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true,
    description = {
      "Look at the installed Java kernel as Jupyter does: say what is wrong and how to mend it.",
      "The exit status is 0 when all is well and 1 when something is wrong."
    })
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @ArgGroup(exclusive = true, heading = "Where (default: where Jupyter finds it first):%n")
  private KernelPlace place;

  @Option(
      names = "--name",
      paramLabel = "NAME",
      defaultValue = InstallCommand.NAME,
      description = "The name of the kernel. Default: ${DEFAULT-VALUE}")
  private String name;

  @Override
  public Integer call() {
    var at = Surroundings.ofThisProcess();
    var check = new InstallationCheck(at, JupyterProgram.find(at), ProgramJar.version());
    var findings =
        KernelPlace.of(place)
            .map(where -> check.check(name, where))
            .orElseGet(() -> check.check(name));
    var out = spec.commandLine().getOut();
    for (var finding : findings) {
      out.println(finding.rank().word() + ": " + finding.what());
      if (!finding.cure().isEmpty()) {
        out.println("    " + finding.cure());
      }
    }
    out.flush();
    return findings.stream().anyMatch(found -> found.rank() == Finding.Rank.PROBLEM) ? 1 : 0;
  }
}
