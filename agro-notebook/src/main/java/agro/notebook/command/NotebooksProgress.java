package agro.notebook.command;

import agro.notebook.run.ParallelRuns;
import agro.notebook.run.RunReport;
import agro.notebook.run.RunReport.Ending;
import agro.notebook.run.RunTask;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;

/** Says how far several notebooks are: one line on a terminal, in a log one for each notebook. */
final class NotebooksProgress implements ParallelRuns.Audience, AutoCloseable {

  private final StatusLine line;
  private final int total;
  private final BiConsumer<RunReport, List<String>> results;
  private final Map<String, String> running = new LinkedHashMap<>();
  private int over;

  /**
   * Progress of several notebooks.
   *
   * @param line where it is said
   * @param total how many notebooks there are
   * @param results who prints what came of each
   */
  NotebooksProgress(StatusLine line, int total, BiConsumer<RunReport, List<String>> results) {
    this.line = line;
    this.total = total;
    this.results = results;
  }

  @Override
  public void cellStarts(RunTask task, int number, int cells) {
    running.put(task.notebook(), shortName(task.notebook()) + " " + number + "/" + cells);
    now();
  }

  private static String shortName(String notebook) {
    return Path.of(notebook).getFileName().toString().replaceFirst("\\.ipynb$", "");
  }

  private void now() {
    line.now(over + " of " + total + " notebooks; " + String.join(", ", running.values()));
  }

  @Override
  public void ended(RunReport report) {
    running.remove(report.notebook());
    over++;
    if (!line.isRewritten() && report.ending() != Ending.STOPPED) {
      var how =
          report.succeeded()
              ? String.format(Locale.ROOT, "%.1f s", report.seconds())
              : report.ending().name().toLowerCase(Locale.ROOT);
      line.stays(over + " of " + total + "  " + report.notebook() + "  " + how);
    }
    now();
  }

  @Override
  public void told(RunReport report, List<String> stray) {
    line.wipe();
    results.accept(report, stray);
  }

  @Override
  public void close() {
    line.wipe();
  }
}
