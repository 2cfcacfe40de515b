package agro.notebook.installed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * A program that was run to its end.
 *
 * @param status its exit status
 * @param out what it wrote to its standard output
 * @param err what it wrote to its standard error
 */
record CommandRun(int status, String out, String err) {

  private static final long MOST_MINUTES = 10;

  static CommandRun of(List<String> command, Path folder, Map<String, String> environment)
      throws IOException, InterruptedException {
    var out = Files.createTempFile("agro-out-", ".txt");
    var err = Files.createTempFile("agro-err-", ".txt");
    try {
      var builder =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile());
      builder.environment().putAll(environment);
      var process = builder.start();
      var ended = process.waitFor(MOST_MINUTES, TimeUnit.MINUTES);
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
      assertThat(ended).as("%s ended", command).isTrue();
      return new CommandRun(
          process.exitValue(),
          Files.readString(out, StandardCharsets.UTF_8),
          Files.readString(err, StandardCharsets.UTF_8));
    } finally {
      Files.deleteIfExists(out);
      Files.deleteIfExists(err);
    }
  }

  /** Everything it wrote, for the message of a test that fails. */
  String all() {
    return out + "\n" + err;
  }
}
