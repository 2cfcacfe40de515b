package agro.notebook.run;

import java.util.List;
import java.util.Objects;

/**
 * What is told of a run when it is over. Made of texts and numbers alone, so that a process can
 * report to another.
 *
 * @param notebook the notebook file, as it was named
 * @param ending how the run ended
 * @param problem why the notebook was not run; empty unless it was refused, lost or stopped
 * @param failures the cells that failed, in order
 * @param summary what the cells tagged {@code summary} say
 * @param files what was written
 * @param times how long each cell took
 * @param seconds how long the run took
 */
public record RunReport(
    String notebook,
    Ending ending,
    String problem,
    List<FailedCell> failures,
    String summary,
    List<String> files,
    List<CellTime> times,
    double seconds) {

  /** How a run can end. */
  public enum Ending {
    /** Every cell ran. */
    DONE,
    /** A cell failed, and the run ended there. */
    FAILED,
    /** The notebook was not run: it could not be read, or its results not be written. */
    REFUSED,
    /** Its process ended before the notebook did. */
    LOST,
    /** It was stopped, or not even begun, because another notebook had failed. */
    STOPPED
  }

  /**
   * How long a cell took.
   *
   * @param cell its place among the cells of code, counted from 1
   * @param seconds the time in seconds
   * @param beginning its first line that says something
   */
  public record CellTime(int cell, double seconds, String beginning) {}

  /** Makes the lists immutable. */
  public RunReport {
    Objects.requireNonNull(notebook, "notebook");
    Objects.requireNonNull(ending, "ending");
    Objects.requireNonNull(problem, "problem");
    Objects.requireNonNull(summary, "summary");
    failures = List.copyOf(failures);
    files = List.copyOf(files);
    times = List.copyOf(times);
  }

  /**
   * A run that did not come to its cells or did not come back.
   *
   * @param notebook the notebook file
   * @param ending how it ended
   * @param problem why, in whole sentences
   * @return the report
   */
  static RunReport without(String notebook, Ending ending, String problem) {
    return new RunReport(notebook, ending, problem, List.of(), "", List.of(), List.of(), 0);
  }

  /**
   * Whether the notebook ran to its end; cells that were allowed to fail do not count.
   *
   * @return true when all is well
   */
  public boolean succeeded() {
    return ending == Ending.DONE;
  }

  /**
   * What went wrong, on one line.
   *
   * @return notebook, cell, line and error; the name of the notebook alone when nothing did
   */
  public String headline() {
    if (ending == Ending.FAILED && !failures.isEmpty()) {
      return failures.get(failures.size() - 1).headline(notebook);
    }
    var first = problem.lines().findFirst().orElse("");
    if (first.isEmpty()) {
      return notebook;
    }
    return first.contains(notebook) ? first : notebook + ": " + first;
  }
}
