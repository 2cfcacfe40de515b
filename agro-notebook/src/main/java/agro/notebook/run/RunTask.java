package agro.notebook.run;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * One notebook to run, with everything that its run needs to know. Made of texts and numbers alone,
 * so that it can be handed to another process.
 *
 * @param notebook the notebook file
 * @param target the files to be written, without their endings
 * @param parameters values for the cell tagged {@code parameters}
 * @param options how to run it and what to write
 */
public record RunTask(
    String notebook, String target, Map<String, String> parameters, Options options) {

  private static final String NOTEBOOK_ENDING = ".ipynb";
  private static final String PAGE_ENDING = ".html";

  /** What stands before the ending of the files of a run that did not reach its end. */
  static final String FAILED = ".failed";

  /**
   * How to run a notebook and what to write.
   *
   * @param code whether the page shows the code open or folded
   * @param pictures folder for the figures of cells tagged {@code picture:NAME}; empty for none
   * @param cellMillis the most that a cell may take, in milliseconds; 0 for no limit
   * @param allowErrors whether the run goes on after a cell that fails
   * @param timings whether the executed notebook says how long each cell took
   * @param inPlace whether the executed notebook takes the place of the notebook
   */
  public record Options(
      CodeView code,
      String pictures,
      long cellMillis,
      boolean allowErrors,
      boolean timings,
      boolean inPlace) {
    /** Refuses nulls and negative times. */
    public Options {
      Objects.requireNonNull(code, "code");
      Objects.requireNonNull(pictures, "pictures");
      if (cellMillis < 0) {
        throw new IllegalArgumentException("a cell cannot take " + cellMillis + " ms");
      }
    }

    Optional<Duration> cellTimeout() {
      return cellMillis == 0 ? Optional.empty() : Optional.of(Duration.ofMillis(cellMillis));
    }
  }

  /** Keeps the order of the parameters and refuses nulls. */
  public RunTask {
    Objects.requireNonNull(notebook, "notebook");
    Objects.requireNonNull(target, "target");
    Objects.requireNonNull(options, "options");
    parameters = Collections.unmodifiableMap(new LinkedHashMap<>(parameters));
  }

  /**
   * This task with other parameters.
   *
   * @param others values for the cell tagged {@code parameters}
   * @return a new task
   */
  public RunTask withParameters(Map<String, String> others) {
    return new RunTask(notebook, target, others, options);
  }

  /**
   * The notebook file.
   *
   * @return where it is read
   */
  public Path file() {
    return Path.of(notebook);
  }

  /**
   * The executed notebook of a run that reached its end.
   *
   * @return where it is written
   */
  public Path executed() {
    return options.inPlace() ? file() : Path.of(target + NOTEBOOK_ENDING);
  }

  /**
   * The page of a run that reached its end.
   *
   * @return where it is written
   */
  public Path page() {
    return Path.of(target + PAGE_ENDING);
  }

  /**
   * The notebook as far as it ran before a cell failed.
   *
   * @return where it is written
   */
  public Path failedNotebook() {
    return Path.of(target + FAILED + NOTEBOOK_ENDING);
  }

  /**
   * The page of a notebook in which a cell failed.
   *
   * @return where it is written
   */
  public Path failedPage() {
    return Path.of(target + FAILED + PAGE_ENDING);
  }
}
