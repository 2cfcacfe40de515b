package agro.notebook.installed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * The kernel, installed from the runnable jar into a data folder of its own, once for all tests of
 * this process. The folder goes when the process ends.
 */
final class InstalledKernel {

  static final String NAME = "agro-java";
  static final Path MODULE = Path.of("").toAbsolutePath();
  static final Path TOP = MODULE.getParent();

  private static InstalledKernel only;

  private final Path folder;

  private InstalledKernel(Path folder) {
    this.folder = folder;
  }

  static synchronized InstalledKernel once() throws IOException, InterruptedException {
    if (only == null) {
      var folder = Files.createTempDirectory("agro-jupyter-");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
      var kernel = new InstalledKernel(folder);
      var told =
          CommandRun.of(
              List.of(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-jar",
                  MODULE.resolve("target/agro-notebook.jar").toString(),
                  "install"),
              folder,
              kernel.environment());
      assertThat(told.status()).as(told.all()).isZero();
      only = kernel;
    }
    return only;
  }

  /** A new folder beside the installation. */
  Path newFolder(String name) throws IOException {
    return Files.createTempDirectory(folder, name);
  }

  /** Variables that lead Jupyter to this kernel and keep it away from the user's own files. */
  Map<String, String> environment() {
    return Map.of(
        "JUPYTER_DATA_DIR", folder.resolve("data").toString(),
        "JUPYTER_CONFIG_DIR", folder.resolve("config").toString(),
        "JUPYTER_RUNTIME_DIR", folder.resolve("runtime").toString(),
        "IPYTHONDIR", folder.resolve("ipython").toString(),
        "XDG_STATE_HOME", folder.resolve("state").toString(),
        "XDG_DATA_HOME", folder.resolve("share").toString(),
        "PYTHONDONTWRITEBYTECODE", "1");
  }

  /** A script of src/test/python, run by Debian's Python, which is the one that has Jupyter. */
  CommandRun script(String name, String... arguments) throws IOException, InterruptedException {
    var command =
        new ArrayList<>(
            List.of("/usr/bin/python3", MODULE.resolve("src/test/python/" + name).toString()));
    command.addAll(List.of(arguments));
    return CommandRun.of(command, TOP, environment());
  }

  static void delete(Path folder) {
    try (var files = Files.walk(folder)) {
      for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a temporary folder stays: " + folder, e);
    }
  }
}
