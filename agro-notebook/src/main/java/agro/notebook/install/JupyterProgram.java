package agro.notebook.install;

import com.google.gson.JsonElement;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.StreamSupport;

/**
 * The command {@code jupyter} that a shell would find.
 *
 * @param path where it is
 * @param dataFolders where it looks for kernels, in its order; empty when it did not say
 */
public record JupyterProgram(Path path, List<String> dataFolders) {

  private static final int PATIENCE_SECONDS = 30;

  /** Copies the folders. */
  public JupyterProgram {
    dataFolders = List.copyOf(dataFolders);
  }

  /**
   * Looks for the command and asks it where it looks for kernels.
   *
   * @param at system and environment; {@code PATH} is one of its variables
   * @return the command, unless there is none
   */
  public static Optional<JupyterProgram> find(Surroundings at) {
    return at.variable("PATH").stream()
        .flatMap(path -> at.system().split(path).stream())
        .flatMap(
            folder ->
                at.system().programEndings().stream()
                    .map(ending -> at.system().join(folder, "jupyter" + ending)))
        .flatMap(name -> program(name).stream())
        .findFirst()
        .map(program -> new JupyterProgram(program, ask(program, at)));
  }

  private static Optional<Path> program(String name) {
    try {
      var file = Path.of(name);
      return Files.isRegularFile(file) && Files.isExecutable(file)
          ? Optional.of(file)
          : Optional.empty();
    } catch (InvalidPathException noPath) {
      return Optional.empty();
    }
  }

  private static List<String> ask(Path program, Surroundings at) {
    try {
      var answer = Files.createTempFile("agro-jupyter-", ".json");
      try {
        var builder =
            new ProcessBuilder(program.toString(), "--paths", "--json")
                .redirectOutput(answer.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().clear();
        builder.environment().putAll(at.environment());
        var process = builder.start();
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
          process.destroyForcibly();
          return List.of();
        }
        return parse(new String(Files.readAllBytes(answer), StandardCharsets.UTF_8));
      } finally {
        Files.deleteIfExists(answer);
      }
    } catch (IOException e) {
      return List.of();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return List.of();
    }
  }

  /** Reads what {@code jupyter --paths --json} prints. */
  static List<String> parse(String text) {
    try {
      var data = JsonParser.parseString(text).getAsJsonObject().getAsJsonArray("data");
      return StreamSupport.stream(data.spliterator(), false).map(JsonElement::getAsString).toList();
    } catch (JsonParseException
        | IllegalStateException
        | UnsupportedOperationException
        | ClassCastException
        | NullPointerException notWhatWasAsked) {
      return List.of();
    }
  }
}
