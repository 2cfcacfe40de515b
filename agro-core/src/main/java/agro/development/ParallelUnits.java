package agro.development;

import agro.report.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/**
 * Numbered units of work shared out among threads, the calling one among them. Units are begun in
 * order. When units fail, the failure of the one with the lowest number is thrown, whatever the
 * number of threads: all units before it have been begun by then and are waited for.
 */
final class ParallelUnits {

  private final String work;
  private final int units;
  private final Progress progress;
  private final AtomicInteger next = new AtomicInteger();
  private final AtomicInteger done = new AtomicInteger();
  private volatile boolean stopped;
  private int failedUnit = Integer.MAX_VALUE;
  private Throwable failure;

  private ParallelUnits(String work, int units, Progress progress) {
    this.work = work;
    this.units = units;
    this.progress = progress;
  }

  /**
   * Runs all units.
   *
   * @param work name of the work for the progress
   * @param units number of units, 0 or more
   * @param threads number of threads, at least 1
   * @param progress told between units by the calling thread; may cancel
   * @param worker makes, once for each thread, what computes a unit
   * @throws CancellationException when the progress cancels
   */
  static void run(
      String work, int units, int threads, Progress progress, Supplier<IntConsumer> worker) {
    new ParallelUnits(work, units, progress).run(threads, worker);
  }

  private void run(int threads, Supplier<IntConsumer> worker) {
    var others = new ArrayList<Thread>();
    for (int i = 1; i < Math.min(threads, units); i++) {
      var thread = new Thread(() -> takeUnits(worker.get(), false), work);
      thread.setDaemon(true);
      thread.start();
      others.add(thread);
    }
    try {
      takeUnits(worker.get(), true);
    } finally {
      stopped = true;
      awaitAll(others);
    }
    throwFailure();
    progress.step(work, units, Math.max(1, units));
  }

  private void takeUnits(IntConsumer worker, boolean telling) {
    while (!stopped) {
      if (telling) {
        progress.step(work, done.get(), Math.max(1, units));
      }
      int unit = next.getAndIncrement();
      if (unit >= units) {
        return;
      }
      try {
        worker.accept(unit);
        done.incrementAndGet();
      } catch (RuntimeException | Error problem) {
        keep(unit, problem);
      }
    }
  }

  private synchronized void keep(int unit, Throwable problem) {
    stopped = true;
    if (unit < failedUnit) {
      failedUnit = unit;
      failure = problem;
    }
  }

  /** A unit is short, so an interrupt is passed on only after the last ones have ended. */
  private static void awaitAll(List<Thread> threads) {
    boolean interrupted = false;
    for (var thread : threads) {
      while (thread.isAlive()) {
        try {
          thread.join();
        } catch (InterruptedException e) {
          interrupted = true;
        }
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private synchronized void throwFailure() {
    if (failure instanceof RuntimeException expected) {
      throw expected;
    }
    if (failure instanceof Error serious) {
      throw serious;
    }
  }
}
