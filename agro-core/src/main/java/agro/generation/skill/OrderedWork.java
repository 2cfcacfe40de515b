package agro.generation.skill;

import agro.report.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;

/** Independent pieces of work, several at a time, with results in the order of the pieces. */
public final class OrderedWork {

  private static final long LISTEN_MILLISECONDS = 100;

  private final String what;
  private final int atATime;
  private final Progress progress;

  /**
   * Work that is told of by a name.
   *
   * @param what the work in words, for the progress and the names of threads
   * @param atATime pieces at a time, at least 1
   * @param progress hears of the pieces that are done, and may cancel
   */
  public OrderedWork(String what, int atATime, Progress progress) {
    this.what = what;
    this.atATime = atATime;
    this.progress = progress;
  }

  /**
   * Does all pieces. What comes of it does not depend on the number at a time; of several failures
   * the first in order is told.
   *
   * @param pieces the pieces
   * @param work what is done with each; it runs on threads of its own
   * @return the results in the order of the pieces
   * @param <T> type of a piece
   * @param <R> type of a result
   * @throws CancellationException when the progress cancels or the thread is interrupted
   */
  public <T, R> List<R> run(List<T> pieces, Function<T, R> work) {
    var workers = Executors.newFixedThreadPool(atATime, this::thread);
    try {
      return awaited(begun(pieces, work, workers));
    } finally {
      workers.shutdownNow();
    }
  }

  private Thread thread(Runnable work) {
    var thread = new Thread(work, what);
    thread.setDaemon(true);
    return thread;
  }

  private static <T, R> List<Future<R>> begun(
      List<T> pieces, Function<T, R> work, ExecutorService workers) {
    var begun = new ArrayList<Future<R>>();
    for (var piece : pieces) {
      begun.add(workers.submit(() -> work.apply(piece)));
    }
    return begun;
  }

  private <R> List<R> awaited(List<Future<R>> begun) {
    var total = Math.max(1, begun.size());
    var results = new ArrayList<R>();
    for (var one : begun) {
      progress.step(what, results.size(), total);
      while (!isDone(one)) {
        progress.step(what, results.size(), total);
      }
      results.add(result(one));
    }
    progress.step(what, total, total);
    return results;
  }

  /** Waits for a piece, but not so long that a wish to cancel would go unheard. */
  private boolean isDone(Future<?> piece) {
    try {
      piece.get(LISTEN_MILLISECONDS, TimeUnit.MILLISECONDS);
    } catch (TimeoutException stillAtWork) {
      return false;
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new CancellationException(what + " was interrupted");
    } catch (ExecutionException toldByTheResult) {
      return true;
    }
    return true;
  }

  private <R> R result(Future<R> piece) {
    try {
      return piece.get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new CancellationException(what + " was interrupted");
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException expected) {
        throw expected;
      }
      if (failed.getCause() instanceof Error serious) {
        throw serious;
      }
      throw new IllegalStateException(what + " failed", failed.getCause());
    }
  }
}
