package agro.season;

import agro.report.Progress;
import agro.weather.TemperatureLog;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Reads several temperature logs, as many at a time as there are processors. */
final class LogFiles {

  private static final String READING = "reading the temperature logs";

  private LogFiles() {}

  /**
   * Reads logs. What comes of it does not depend on the number of processors; of several bad logs
   * the first one is told.
   *
   * @param files the logs
   * @param progress told of every log that has been read
   * @return the logs in the order of the files
   * @throws CancellationException when the progress cancels or the thread is interrupted
   */
  static List<TemperatureLog> read(List<LogFile> files, Progress progress) {
    var atATime = Math.max(1, Math.min(files.size(), Runtime.getRuntime().availableProcessors()));
    var workers = Executors.newFixedThreadPool(atATime, LogFiles::thread);
    try {
      return awaited(begun(files, workers), progress);
    } finally {
      workers.shutdownNow();
    }
  }

  private static Thread thread(Runnable work) {
    var thread = new Thread(work, "log reader");
    thread.setDaemon(true);
    return thread;
  }

  private static List<Future<TemperatureLog>> begun(List<LogFile> files, ExecutorService workers) {
    var begun = new ArrayList<Future<TemperatureLog>>();
    for (var file : files) {
      begun.add(workers.submit(() -> file.read(Progress.silent())));
    }
    return begun;
  }

  private static List<TemperatureLog> awaited(
      List<Future<TemperatureLog>> begun, Progress progress) {
    var total = Math.max(1, begun.size());
    var logs = new ArrayList<TemperatureLog>();
    for (var one : begun) {
      progress.step(READING, logs.size(), total);
      logs.add(result(one));
    }
    progress.step(READING, total, total);
    return logs;
  }

  private static TemperatureLog result(Future<TemperatureLog> reading) {
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
