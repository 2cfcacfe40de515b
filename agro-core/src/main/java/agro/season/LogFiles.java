package agro.season;

import agro.report.InputProblem;
import agro.report.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BiConsumer;

/** Reads several temperature logs, as many at a time as there are processors. */
final class LogFiles {

  private static final String READING = "reading the temperature logs";

  private LogFiles() {}

  /**
   * Reads the lines of known days. What comes of it does not depend on the number of processors; of
   * several bad logs the first one is told.
   *
   * @param files the logs
   * @param known days that are read; days foreseen are read whole, for they were foretold by then
   * @param progress told of every log that has been read
   * @return the logs in the order of the files, nothing for one without a known day
   * @throws CancellationException when the progress cancels or the thread is interrupted
   */
  static List<Optional<MeasuredLog>> read(List<LogFile> files, KnownDays known, Progress progress) {
    return read(
        files,
        known,
        progress,
        (file, problem) -> {
          throw problem;
        });
  }

  /**
   * The same with logs that may be bad.
   *
   * @param bad hears of each bad log, which gives nothing
   */
  static List<Optional<MeasuredLog>> read(
      List<LogFile> files,
      KnownDays known,
      Progress progress,
      BiConsumer<LogFile, InputProblem> bad) {
    var atATime = Math.max(1, Math.min(files.size(), Runtime.getRuntime().availableProcessors()));
    var workers = Executors.newFixedThreadPool(atATime, LogFiles::thread);
    try {
      return awaited(files, begun(files, known, workers), progress, bad);
    } finally {
      workers.shutdownNow();
    }
  }

  private static Thread thread(Runnable work) {
    var thread = new Thread(work, "log reader");
    thread.setDaemon(true);
    return thread;
  }

  private static List<Future<Optional<MeasuredLog>>> begun(
      List<LogFile> files, KnownDays known, ExecutorService workers) {
    var begun = new ArrayList<Future<Optional<MeasuredLog>>>();
    for (var file : files) {
      begun.add(
          workers.submit(
              () ->
                  file.read(
                      day -> file.madeOn().isPresent() || known.knows(day), Progress.silent())));
    }
    return begun;
  }

  private static List<Optional<MeasuredLog>> awaited(
      List<LogFile> files,
      List<Future<Optional<MeasuredLog>>> begun,
      Progress progress,
      BiConsumer<LogFile, InputProblem> bad) {
    var total = Math.max(1, begun.size());
    var logs = new ArrayList<Optional<MeasuredLog>>();
    for (var one : begun) {
      progress.step(READING, logs.size(), total);
      try {
        logs.add(result(one));
      } catch (InputProblem problem) {
        bad.accept(files.get(logs.size()), problem);
        logs.add(Optional.empty());
      }
    }
    progress.step(READING, total, total);
    return logs;
  }

  private static Optional<MeasuredLog> result(Future<Optional<MeasuredLog>> reading) {
    try {
      return reading.get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new CancellationException(READING + " was interrupted");
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException expected) {
        throw expected;
      }
      if (failed.getCause() instanceof Error serious) {
        throw serious;
      }
      throw new IllegalStateException(READING + " failed", failed.getCause());
    }
  }
}
