package agro.notebook.run;

import agro.notebook.run.RunReport.Ending;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** One notebook that runs in a process of its own, as the program that started it sees it. */
final class ProcessRun {

  private static final int MOST_STRAY_LINES = 100;
  private static final long PATIENCE_SECONDS = 3;

  private final RunTask task;
  private final ParallelRuns.Audience audience;
  private final Deque<String> stray = new ArrayDeque<>();
  private final Process process;
  private volatile boolean stopped;
  private RunReport report;

  /**
   * Starts the process and gives it its task.
   *
   * @param command how the process is started
   * @param task its task
   * @param audience who hears how far it is
   * @throws IOException when it cannot be started
   */
  ProcessRun(List<String> command, RunTask task, ParallelRuns.Audience audience)
      throws IOException {
    this.task = task;
    this.audience = audience;
    this.process = new ProcessBuilder(command).start();
    // The stream stays open: its end tells the process that nobody waits for it any more.
    var in = process.getOutputStream();
    in.write((RunWire.task(task) + "\n").getBytes(StandardCharsets.UTF_8));
    in.flush();
  }

  /**
   * Listens until the process has ended.
   *
   * @return what came of the notebook
   * @throws InterruptedException when the waiting is given up
   */
  RunReport await() throws InterruptedException {
    var errors = new Thread(() -> listen(process.getErrorStream(), false), "errors of a notebook");
    errors.setDaemon(true);
    errors.start();
    listen(process.getInputStream(), true);
    var status = process.waitFor();
    errors.join(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
    if (report != null) {
      return report;
    }
    return stopped
        ? RunReport.without(task.notebook(), Ending.STOPPED, ParallelRuns.STOPPED)
        : lost(status);
  }

  private RunReport lost(int status) {
    synchronized (stray) {
      var last = stray.isEmpty() ? "" : "\n  " + String.join("\n  ", stray);
      return RunReport.without(
          task.notebook(),
          Ending.LOST,
          "its process ended with status " + status + " before the notebook did" + last);
    }
  }

  private void listen(InputStream stream, boolean reports) {
    try (var lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      for (var line = lines.readLine(); line != null; line = lines.readLine()) {
        if (!reports || !isReport(line)) {
          keep(line);
        }
      }
    } catch (IOException | UncheckedIOException ended) {
      // The process was stopped; what it said until then is there.
    }
  }

  private boolean isReport(String line) {
    var start = RunWire.cell(line);
    start.ifPresent(cell -> audience.cellStarts(task, cell.number(), cell.total()));
    var end = RunWire.report(line);
    end.ifPresent(whole -> report = whole);
    return start.isPresent() || end.isPresent();
  }

  private void keep(String line) {
    synchronized (stray) {
      stray.add(line);
      if (stray.size() > MOST_STRAY_LINES) {
        stray.remove();
      }
    }
  }

  /** What the process said besides its reports. */
  List<String> stray() {
    synchronized (stray) {
      return List.copyOf(stray);
    }
  }

  /** Asks the process to end; it does so as soon as nothing is half written. */
  void leave() {
    stopped = true;
    try {
      process.getOutputStream().close();
    } catch (IOException gone) {
      // It has ended already.
    }
  }

  /** Ends the process and what it has started, by force when asking does not help. */
  void stop() {
    leave();
    if (!endsWithin(PATIENCE_SECONDS)) {
      process.descendants().forEach(ProcessHandle::destroy);
      process.destroy();
      if (!endsWithin(PATIENCE_SECONDS)) {
        process.destroyForcibly();
      }
    }
  }

  private boolean endsWithin(long seconds) {
    try {
      return process.waitFor(seconds, TimeUnit.SECONDS);
    } catch (InterruptedException hurry) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
