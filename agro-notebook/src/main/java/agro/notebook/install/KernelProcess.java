package agro.notebook.install;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A kernel that was started from the command line of its spec, in a folder of its own.
 *
 * @param process the process
 * @param connection where it listens
 * @param folder its working folder, deleted at the end
 */
record KernelProcess(Process process, ConnectionFile connection, Path folder)
    implements AutoCloseable {

  private static final int LONGEST_COMPLAINT = 4000;

  /**
   * Starts a kernel.
   *
   * @throws IOException when no port is free or the launcher cannot be started
   */
  static KernelProcess start(List<String> arguments) throws IOException {
    var folder = Files.createTempDirectory("agro-kernel-");
    try {
      var connection = ConnectionFile.onFreePorts();
      var file = connection.writeInto(folder);
      var command =
          arguments.stream()
              .map(argument -> argument.replace(LaunchLine.CONNECTION_FILE, file.toString()))
              .toList();
      var process =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectInput(ProcessBuilder.Redirect.PIPE)
              .redirectOutput(folder.resolve("out.txt").toFile())
              .redirectError(folder.resolve("err.txt").toFile())
              .start();
      return new KernelProcess(process, connection, folder);
    } catch (IOException e) {
      delete(folder);
      throw e;
    }
  }

  /** What the process wrote to its terminal, the end of it where that is long. */
  String complaint() {
    var text = (read("err.txt") + read("out.txt")).strip();
    return text.length() <= LONGEST_COMPLAINT
        ? text
        : "..." + text.substring(text.length() - LONGEST_COMPLAINT);
  }

  private String read(String name) {
    try {
      return new String(Files.readAllBytes(folder.resolve(name)), StandardCharsets.UTF_8);
    } catch (IOException nothingWritten) {
      return "";
    }
  }

  boolean endsWithin(Duration patience) throws InterruptedException {
    return process.waitFor(patience.toMillis(), TimeUnit.MILLISECONDS);
  }

  /** Ends the process if it still runs, and deletes its folder. */
  @Override
  public void close() {
    try {
      process.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    delete(folder);
  }

  private static void delete(Path folder) {
    try (var all = Files.walk(folder)) {
      for (var file : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException leftToTheSystem) {
      // A temporary folder; the system clears it away.
    }
  }
}
