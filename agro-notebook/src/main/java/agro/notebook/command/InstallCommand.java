package agro.notebook.command;

import agro.notebook.install.Destination;
import agro.notebook.install.InstallRequest;
import agro.notebook.install.Installed;
import agro.notebook.install.KernelInstaller;
import agro.notebook.install.Surroundings;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes the kernel known to Jupyter, or removes it. */
@Command(
    name = "install",
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true,
    description = "Make the Java kernel known to Jupyter, or remove it again.")
final class InstallCommand implements Callable<Integer> {

  static final String NAME = "agro-java";

  @Spec private CommandSpec spec;

  @ArgGroup(exclusive = true, heading = "Where (default: --user):%n")
  private KernelPlace place;

  @Option(
      names = "--name",
      paramLabel = "NAME",
      defaultValue = NAME,
      description = "The name by which Jupyter calls the kernel. Default: ${DEFAULT-VALUE}")
  private String name;

  @Option(
      names = "--display-name",
      paramLabel = "TEXT",
      defaultValue = "Java (agro)",
      description = "The name that people choose from. Default: ${DEFAULT-VALUE}")
  private String displayName;

  @Option(
      names = "--jvm-option",
      paramLabel = "OPTION",
      description = {
        "An option of the virtual machine, as --jvm-option=-Xmx2g.",
        "May be given several times."
      })
  private List<String> options = new ArrayList<>();

  @Option(
      names = "--in-place",
      description = {
        "Use the jar where it lies instead of a copy beside the kernel spec;",
        "the kernel breaks when the jar goes."
      })
  private boolean inPlace;

  @Option(
      names = "--no-archive",
      description = "Make no class-data archive: quicker to install, slower to start.")
  private boolean noArchive;

  @Option(names = "--remove", description = "Remove the kernel that was installed there.")
  private boolean remove;

  @Override
  public Integer call() {
    var destination = KernelPlace.of(place).orElseGet(Destination.CurrentUser::new);
    var installer =
        new KernelInstaller(
            Surroundings.ofThisProcess(),
            Rehearsal.cells(),
            new PhaseProgress(spec.commandLine().getErr()));
    var out = spec.commandLine().getOut();
    if (remove) {
      installer.remove(destination, name).forEach(out::println);
    } else {
      var jar = ProgramJar.path();
      tell(installer.install(request(destination, jar)), out);
    }
    out.flush();
    return 0;
  }

  private InstallRequest request(Destination destination, Path jar) {
    return new InstallRequest(
        destination,
        name,
        displayName,
        options,
        jar,
        inPlace ? InstallRequest.JarUse.IN_PLACE : InstallRequest.JarUse.COPIED,
        noArchive ? InstallRequest.ArchiveUse.NONE : InstallRequest.ArchiveUse.MADE,
        ProgramJar.version().version());
  }

  private void tell(Installed installed, PrintWriter out) {
    out.println((installed.replaced() ? "installed again: " : "installed: ") + installed.folder());
    installed.remarks().forEach(out::println);
    out.println("start:   jupyter notebook, and choose \"" + displayName + "\" for a new notebook");
    out.println("check:   java -jar agro-notebook.jar check" + again());
    out.println("undo:    java -jar agro-notebook.jar install --remove" + again());
    out.println("         or jupyter kernelspec remove " + installed.name());
  }

  /** The options that lead to the same kernel, for the next command line. */
  private String again() {
    var words = new StringBuilder();
    KernelPlace.of(place).map(KernelPlace::words).ifPresent(words::append);
    return name.equals(NAME) ? words.toString() : words.append(" --name ").append(name).toString();
  }
}
