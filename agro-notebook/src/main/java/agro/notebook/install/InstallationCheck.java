package agro.notebook.install;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks at an installation as Jupyter would meet it, and says what is wrong with it.
 *
 * @param at system and environment
 * @param jupyter the command {@code jupyter}, if there is one
 * @param program the running program, to which the installed one is compared
 */
public record InstallationCheck(
    Surroundings at, Optional<JupyterProgram> jupyter, ProgramVersion program) {

  private static final String INSTALL = "Install the kernel: java -jar agro-notebook.jar install.";

  /**
   * Checks the kernel that Jupyter would start under a name.
   *
   * @param name the name of the kernel
   * @return what was found, in the order in which it was looked at
   */
  public List<Finding> check(String name) {
    return check(name, searchedFolders());
  }

  /**
   * Checks the kernel at one place, and whether Jupyter would start another one in its stead.
   *
   * @param name the name of the kernel
   * @param place where it is installed
   * @return what was found, in the order in which it was looked at
   */
  public List<Finding> check(String name, Destination place) {
    var wanted = normal(place.dataFolder(at));
    var searched = searchedFolders();
    if (searched.contains(wanted)) {
      var findings = new ArrayList<Finding>();
      var specs = specs(name, searched);
      var meant = KernelFolder.of(wanted, name);
      if (!specs.isEmpty() && !specs.get(0).equals(meant) && Files.exists(meant.spec())) {
        findings.add(shadowed(meant, specs.get(0)));
      }
      findings.addAll(check(name, List.of(wanted)));
      return findings;
    }
    var findings = new ArrayList<Finding>();
    findings.add(
        Finding.note(
            "The Jupyter that was found here does not look for kernels in " + wanted,
            "Start the Jupyter that belongs to that folder, or name the folder in JUPYTER_PATH."));
    findings.addAll(check(name, List.of(wanted)));
    return findings;
  }

  private List<Path> searchedFolders() {
    return jupyter
        .map(JupyterProgram::dataFolders)
        .filter(folders -> !folders.isEmpty())
        .orElseGet(() -> DataFolders.search(at))
        .stream()
        .map(InstallationCheck::normal)
        .distinct()
        .toList();
  }

  private static Path normal(String folder) {
    return Path.of(folder).toAbsolutePath().normalize();
  }

  private List<Finding> check(String name, List<Path> folders) {
    var findings = new ArrayList<Finding>();
    findings.add(jupyterFinding());
    findings.addAll(unreadable(folders));
    var specs = specs(name, folders);
    if (specs.isEmpty()) {
      findings.add(
          Finding.problem(
              "There is no kernel named " + name + ". Looked in:" + lines(folders), INSTALL));
      return findings;
    }
    var used = specs.get(0);
    var ours = specs.stream().filter(InstallationCheck::isOurs).findFirst();
    if (!isOurs(used) && ours.isPresent()) {
      findings.add(shadowed(ours.get(), used));
      used = ours.get();
    }
    for (var other : specs) {
      if (!other.equals(used) && isOurs(other)) {
        findings.add(
            Finding.note(
                "The kernel is installed a second time, in "
                    + other.path()
                    + ", where it is not used",
                "Remove that one with install --remove if nobody needs it."));
      }
    }
    findings.addAll(new SpecCheck(used, program).findings());
    return findings;
  }

  private static boolean isOurs(KernelFolder folder) {
    return folder.read().flatMap(KernelSpec::origin).isPresent();
  }

  private static List<KernelFolder> specs(String name, List<Path> folders) {
    return folders.stream()
        .map(folder -> KernelFolder.of(folder, name))
        .filter(folder -> Files.exists(folder.spec()))
        .toList();
  }

  private static Finding shadowed(KernelFolder meant, KernelFolder used) {
    return Finding.problem(
        "Jupyter starts another kernel of that name, from "
            + used.path()
            + ", since it looks there before "
            + meant.path(),
        "Remove the other one (jupyter kernelspec remove "
            + used.path().getFileName()
            + "), or install ours under another name with install --name.");
  }

  private Finding jupyterFinding() {
    return jupyter
        .map(found -> Finding.good("Jupyter is at " + found.path()))
        .orElseGet(
            () ->
                Finding.note(
                    "The command jupyter is not on the PATH",
                    "Activate the environment that Jupyter is in, or install Jupyter; the usual"
                        + " folders were looked at all the same."));
  }

  private static List<Finding> unreadable(List<Path> folders) {
    return folders.stream()
        .map(folder -> folder.resolve("kernels"))
        .filter(folder -> Files.exists(folder) && !canBeListed(folder))
        .map(
            folder ->
                Finding.problem(
                    "The folder " + folder + " cannot be read",
                    "Give yourself the right to read it and the folders in it."))
        .toList();
  }

  private static boolean canBeListed(Path folder) {
    try (var files = Files.list(folder)) {
      return files.count() >= 0;
    } catch (IOException e) {
      return false;
    }
  }

  private static String lines(List<Path> folders) {
    var text = new StringBuilder();
    folders.forEach(folder -> text.append("\n    ").append(folder.resolve("kernels")));
    return text.toString();
  }
}
