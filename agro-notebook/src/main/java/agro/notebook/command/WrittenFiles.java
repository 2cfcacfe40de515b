package agro.notebook.command;

import agro.notebook.run.NotebookDocument;
import agro.notebook.run.RunTask;
import agro.report.InputProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds out, before anything runs, whether results would overwrite a notebook or each other. */
final class WrittenFiles {

  private final List<RunTask> tasks;
  private final Map<String, String> writers = new HashMap<>();

  private WrittenFiles(List<RunTask> tasks) {
    this.tasks = tasks;
  }

  /**
   * Looks at all files that the tasks would write.
   *
   * @param tasks the tasks
   * @return what would be lost, in a sentence; empty when all is well
   */
  static Optional<String> check(List<RunTask> tasks) {
    return new WrittenFiles(tasks).check();
  }

  private Optional<String> check() {
    return tasks.stream().flatMap(this::troubles).findFirst();
  }

  private Stream<String> troubles(RunTask task) {
    return Stream.concat(overwritten(task).stream(), shared(task).stream());
  }

  private Optional<String> overwritten(RunTask task) {
    if (task.options().inPlace()) {
      return Optional.empty();
    }
    return tasks.stream()
        .filter(other -> isSame(task.executed(), other.file()))
        .map(
            other ->
                "the executed copy would overwrite the notebook "
                    + other.notebook()
                    + "; name another folder with --out, or say --in-place if that is meant")
        .findFirst();
  }

  private Optional<String> shared(RunTask task) {
    var files = new java.util.ArrayList<Path>(List.of(task.executed(), task.page()));
    if (!task.options().pictures().isEmpty()) {
      var folder = Path.of(task.options().pictures());
      pictures(task).forEach(name -> files.add(folder.resolve(name + ".png")));
    }
    for (var file : files) {
      var earlier = writers.putIfAbsent(key(file), task.notebook());
      if (earlier != null && !earlier.equals(task.notebook())) {
        return Optional.of(
            earlier
                + " and "
                + task.notebook()
                + " would both write "
                + file
                + "; rename one of them or run them with different folders");
      }
    }
    return Optional.empty();
  }

  private static List<String> pictures(RunTask task) {
    try {
      return NotebookDocument.read(task.file()).cells().stream()
          .flatMap(cell -> cell.picture().stream())
          .toList();
    } catch (InputProblem unreadable) {
      // The run itself says so.
      return List.of();
    }
  }

  /** On some systems names that differ in case alone mean one file. */
  private static String key(Path file) {
    return file.toAbsolutePath().normalize().toString().toLowerCase(Locale.ROOT);
  }

  private static boolean isSame(Path one, Path other) {
    try {
      return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
    } catch (IOException unknown) {
      return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
    }
  }
}
