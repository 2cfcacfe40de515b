package agro.notebook.command;

import agro.notebook.run.FailedCell;
import agro.notebook.run.ParallelRuns;
import agro.notebook.run.ParallelRuns.OtherNotebooks;
import agro.notebook.run.RunListener;
import agro.notebook.run.RunReport;
import agro.notebook.run.RunReport.Ending;
import agro.notebook.run.RunTask;
import agro.notebook.run.TaskRun;
import java.io.PrintWriter;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Runs notebooks and tells a terminal, or a log, of it: results to one stream, trouble to the
 * other.
 */
final class RunTerminal {

  /** What is told. */
  enum Detail {
    /** Summaries, names of files, failures. */
    RESULTS,
    /** How far the runs are. */
    PROGRESS,
    /** The whole time and the slowest cells. */
    TIMINGS,
    /** The technical details of failures. */
    TRACES
  }

  private static final int SLOWEST = 5;
  private static final int MOST_OF_A_LINE = 50;

  private final PrintWriter out;
  private final PrintWriter err;
  private final Set<Detail> details = EnumSet.noneOf(Detail.class);

  RunTerminal(PrintWriter out, PrintWriter err) {
    this.out = out;
    this.err = err;
  }

  void show(Detail detail) {
    details.add(detail);
  }

  /**
   * Runs one notebook in this process.
   *
   * @param task the notebook
   * @return the exit status
   */
  int runHere(RunTask task) {
    RunReport report;
    if (details.contains(Detail.PROGRESS)) {
      try (var progress = new CellProgress(StatusLine.on(err))) {
        report = TaskRun.perform(task, progress);
      }
    } else {
      report = TaskRun.perform(task, RunListener.silent());
    }
    tell(report);
    return report.succeeded() ? 0 : 1;
  }

  /**
   * Runs several notebooks, each in a process of its own.
   *
   * @param tasks the notebooks
   * @param atOnce how many at the same time
   * @param others what happens to the others when one fails
   * @return the exit status
   */
  int runApart(List<RunTask> tasks, int atOnce, OtherNotebooks others) {
    var command = ThisProgram.command(RunWorkerCommand.arguments());
    var status = details.contains(Detail.PROGRESS) ? StatusLine.on(err) : StatusLine.silent();
    List<RunReport> reports;
    try (var progress = new NotebooksProgress(status, tasks.size(), this::tellOneOfMany)) {
      reports = new ParallelRuns(command, others, progress).run(tasks, atOnce);
    }
    return conclude(reports);
  }

  private void tellOneOfMany(RunReport report, List<String> stray) {
    if (report.ending() != Ending.STOPPED) {
      out.println(report.notebook());
      out.flush();
      tell(report);
      if (report.ending() != Ending.LOST && !stray.isEmpty()) {
        err.println("The process of " + report.notebook() + " also said:");
        stray.forEach(line -> err.println("  " + line));
        err.flush();
      }
      out.println();
      out.flush();
    }
  }

  private int conclude(List<RunReport> reports) {
    var bad = reports.stream().filter(report -> !report.succeeded()).toList();
    var failed = bad.stream().filter(report -> report.ending() != Ending.STOPPED).toList();
    if (!failed.isEmpty()) {
      err.println(failed.size() + " of " + reports.size() + " notebooks failed:");
      failed.forEach(report -> err.println("  " + report.headline()));
    }
    if (bad.size() > failed.size()) {
      err.println("Stopped for that reason, or not begun:");
      bad.stream()
          .filter(report -> report.ending() == Ending.STOPPED)
          .forEach(report -> err.println("  " + report.notebook()));
    }
    err.flush();
    return bad.isEmpty() ? 0 : 1;
  }

  private void tell(RunReport report) {
    report.failures().forEach(failure -> tell(report, failure));
    if (!report.problem().isEmpty()) {
      var named = report.problem().contains(report.notebook());
      err.println(named ? report.problem() : report.notebook() + ": " + report.problem());
    }
    if (report.succeeded()) {
      if (!report.summary().isEmpty()) {
        out.println(report.summary());
      }
      report.files().forEach(out::println);
    } else if (!report.files().isEmpty()) {
      err.println("As far as it ran: " + String.join(", ", report.files()));
    }
    if (details.contains(Detail.TIMINGS) && !report.times().isEmpty()) {
      tellTimes(report);
    }
    err.flush();
    out.flush();
  }

  private void tell(RunReport report, FailedCell failure) {
    err.println(report.notebook() + ", " + failure.place() + ": " + failure.sentence());
    if (details.contains(Detail.TRACES)) {
      err.println(failure.details());
    } else {
      failure.excerpt().forEach(err::println);
    }
  }

  private void tellTimes(RunReport report) {
    out.println(
        String.format(
            Locale.ROOT,
            "%.1f s in all, %d cells; the slowest:",
            report.seconds(),
            report.times().size()));
    report.times().stream()
        .sorted(Comparator.comparingDouble(RunReport.CellTime::seconds).reversed())
        .limit(SLOWEST)
        .forEach(
            time ->
                out.println(
                    String.format(
                        Locale.ROOT,
                        "  %8.3f s  cell %d  %s",
                        time.seconds(),
                        time.cell(),
                        shortened(time.beginning()))));
  }

  private static String shortened(String line) {
    return line.length() <= MOST_OF_A_LINE ? line : line.substring(0, MOST_OF_A_LINE - 1) + "…";
  }
}
