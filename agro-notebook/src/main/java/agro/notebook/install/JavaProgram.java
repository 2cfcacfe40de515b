package agro.notebook.install;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;

/**
 * A Java launcher and what it can do.
 *
 * @param version its version, such as 17.0.15
 * @param lacking the modules that the kernel needs and that it does not have: a JRE lacks them
 */
record JavaProgram(String version, List<String> lacking) {

  /** The oldest Java that runs the kernel. */
  static final int OLDEST = 17;

  private static final List<String> NEEDED =
      List.of("java.instrument", "jdk.compiler", "jdk.jshell");
  private static final Pattern MODULE = Pattern.compile("([a-z][\\w.]*)@(\\S+)");
  private static final int PATIENCE_SECONDS = 30;

  /** The launcher that runs this process. */
  static Path running() {
    var name = SystemKind.of(System.getProperty("os.name")).javaProgram();
    return Path.of(System.getProperty("java.home"), "bin", name).toAbsolutePath();
  }

  /**
   * Asks a launcher for its modules.
   *
   * @param program the launcher, as it stands in a command line
   * @return what it answers, or nothing when it is no Java launcher of version 9 or newer
   */
  static Optional<JavaProgram> ask(String program) {
    try {
      var list = Files.createTempFile("agro-modules-", ".txt");
      try {
        var process =
            new ProcessBuilder(program, "--list-modules")
                .redirectErrorStream(true)
                .redirectOutput(list.toFile())
                .start();
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
          process.destroyForcibly();
          return Optional.empty();
        }
        return parse(new String(Files.readAllBytes(list), StandardCharsets.UTF_8));
      } finally {
        Files.deleteIfExists(list);
      }
    } catch (IOException e) {
      return Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  /** Reads the list of modules that a launcher prints. */
  static Optional<JavaProgram> parse(String modules) {
    var lacking = new TreeSet<>(NEEDED);
    Optional<String> version = Optional.empty();
    var module = MODULE.matcher(modules);
    while (module.find()) {
      lacking.remove(module.group(1));
      if (module.group(1).equals("java.base")) {
        version = Optional.of(module.group(2));
      }
    }
    return version.map(found -> new JavaProgram(found, List.copyOf(lacking)));
  }

  /** The number of its feature release, such as 17. */
  int feature() {
    var digits = version.split("\\D", 2)[0];
    return digits.isEmpty() ? 0 : Integer.parseInt(digits);
  }

  boolean isTooOld() {
    return feature() < OLDEST;
  }
}
