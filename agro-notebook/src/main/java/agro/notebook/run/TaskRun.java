package agro.notebook.run;

import agro.notebook.run.RunReport.CellTime;
import agro.notebook.run.RunReport.Ending;
import agro.reading.SafeFile;
import agro.report.InputProblem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Does one task in this process: runs the notebook, writes what came of it, and reports. */
public final class TaskRun {

  private final RunTask task;
  private final List<String> files = new ArrayList<>();

  private TaskRun(RunTask task) {
    this.task = task;
  }

  /**
   * Runs a notebook and writes its files: executed notebook and page, or, when a cell failed, both
   * under names with {@code .failed} in them. Files of an earlier run that reached its end stay.
   *
   * @param task what to run
   * @param listener who hears how far it is
   * @return what came of it; a notebook that cannot be read or written is reported, not thrown
   */
  public static RunReport perform(RunTask task, RunListener listener) {
    var start = System.nanoTime();
    try {
      var run = runner(task, listener).run(task.file());
      return new TaskRun(task).finished(run, start);
    } catch (InputProblem problem) {
      return RunReport.without(task.notebook(), Ending.REFUSED, problem.getMessage());
    } catch (UncheckedIOException unwritten) {
      return RunReport.without(
          task.notebook(),
          Ending.REFUSED,
          unwritten.getMessage() + ": " + unwritten.getCause().getMessage());
    }
  }

  private static NotebookRunner runner(RunTask task, RunListener listener) {
    var runner = NotebookRunner.standard().withListener(listener);
    for (var parameter : task.parameters().entrySet()) {
      runner = runner.withParameter(parameter.getKey(), parameter.getValue());
    }
    var timeout = task.options().cellTimeout();
    if (timeout.isPresent()) {
      runner = runner.withCellTimeout(timeout.get());
    }
    return task.options().allowErrors() ? runner.goingOnAfterErrors() : runner;
  }

  private RunReport finished(NotebookRun run, long start) {
    var stopped = run.failed().isPresent() && !task.options().allowErrors();
    var notebook = task.options().timings() ? run.toTimedNotebook() : run.toNotebook();
    var page = run.toPage(task.options().code());
    WholeWrites.whole(
        () -> {
          if (stopped) {
            write(task.failedNotebook(), notebook);
            write(task.failedPage(), page);
          } else {
            write(task.executed(), notebook);
            writePictures(run);
            write(task.page(), page);
            forget(task.failedNotebook());
            forget(task.failedPage());
          }
        });
    return new RunReport(
        task.notebook(),
        stopped ? Ending.FAILED : Ending.DONE,
        "",
        run.failures().stream().map(FailedCell::of).toList(),
        run.summary(),
        files,
        run.outcomes().stream().map(TaskRun::time).toList(),
        seconds(Duration.ofNanos(System.nanoTime() - start)));
  }

  private void write(Path file, String text) {
    SafeFile.writeText(file, text);
    files.add(file.toString());
  }

  private void writePictures(NotebookRun run) {
    if (!task.options().pictures().isEmpty()) {
      var folder = Path.of(task.options().pictures());
      run.pictures()
          .forEach(
              (name, png) -> {
                var file = folder.resolve(name + ".png");
                SafeFile.writeBytes(file, png);
                files.add(file.toString());
              });
    }
  }

  /** What an earlier run left behind when a cell failed, is wrong now. */
  private static void forget(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException stays) {
      throw new UncheckedIOException(file + ", of an earlier run, could not be removed", stays);
    }
  }

  private static CellTime time(CellOutcome outcome) {
    var beginning =
        outcome.cell().source().lines().map(String::strip).filter(line -> !line.isEmpty());
    return new CellTime(
        outcome.number(), seconds(outcome.time()), beginning.findFirst().orElse(""));
  }

  private static double seconds(Duration time) {
    return time.toMillis() / 1000.0;
  }
}
