package agro.notebook.command;

import agro.notebook.install.Destination;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options that say where the kernel is or goes; at most one of them is given. */
final class KernelPlace {

  @Option(names = "--user", description = "For yourself: Jupyter's data folder of the user.")
  private boolean user;

  @Option(
      names = "--sys-prefix",
      description = "For the Python environment that is active (a virtual one or one of conda).")
  private boolean activeEnvironment;

  @Option(
      names = "--prefix",
      paramLabel = "FOLDER",
      description = "For the environment or installation whose top is this folder.")
  private String prefix;

  /** The place that was named. */
  static Optional<Destination> of(KernelPlace given) {
    if (given == null) {
      return Optional.empty();
    }
    if (given.prefix != null) {
      return Optional.of(new Destination.Prefix(given.prefix));
    }
    if (given.activeEnvironment) {
      return Optional.of(new Destination.ActiveEnvironment());
    }
    return given.user ? Optional.of(new Destination.CurrentUser()) : Optional.empty();
  }

  /** The option that names a place, with a blank before it. */
  static String words(Destination place) {
    if (place instanceof Destination.Prefix at) {
      return " --prefix \"" + at.folder() + "\"";
    }
    return place instanceof Destination.ActiveEnvironment ? " --sys-prefix" : " --user";
  }
}
