package agro.notebook.run;

import agro.notebook.kernel.CellEvaluator;
import agro.notebook.kernel.CellFailure;
import agro.notebook.kernel.CellResult;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** Interrupts cells that take longer than they may. */
final class CellTimer implements AutoCloseable {

  /** The name of the failure of a cell that took too long. */
  static final String TOO_LONG = "CellTimeout";

  private final CellEvaluator evaluator;
  private final Duration most;
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            var thread = new Thread(work, "cell timer");
            thread.setDaemon(true);
            return thread;
          });

  CellTimer(CellEvaluator evaluator, Duration most) {
    this.evaluator = evaluator;
    this.most = most;
  }

  /**
   * Evaluates a cell.
   *
   * @param name how messages call the cell
   * @param cell the evaluation
   * @return its result, or a failure when it was interrupted for taking too long
   */
  CellResult timed(String name, Supplier<CellResult> cell) {
    var alarm = new Alarm();
    var call = clock.schedule(alarm::ring, most.toMillis(), TimeUnit.MILLISECONDS);
    var result = cell.get();
    call.cancel(false);
    return alarm.rangBeforeTheEnd() ? tooLong(name, result) : result;
  }

  /** Rings at most once, and never into the next cell. */
  private final class Alarm {
    private boolean ended;
    private boolean rang;

    synchronized void ring() {
      if (!ended) {
        rang = true;
        evaluator.interrupt();
      }
    }

    synchronized boolean rangBeforeTheEnd() {
      ended = true;
      return rang;
    }
  }

  /** Also a cell that took the interrupt for an end of waiting and went on is not to be trusted. */
  private CellResult tooLong(String name, CellResult result) {
    var message =
        "the cell ran longer than "
            + inWords(most)
            + ", the most that this run allows, and was"
            + " stopped";
    var trace = new ArrayList<String>();
    trace.add(TOO_LONG + ": " + message);
    result.failure().ifPresent(failure -> failure.trace().stream().skip(1).forEach(trace::add));
    var place = result.failure().map(CellFailure::place);
    var failure =
        new CellFailure(
            CellFailure.Kind.INTERRUPTED,
            TOO_LONG,
            message,
            place.orElse(new CellFailure.Place(name, 0)),
            trace,
            Optional.empty());
    return new CellResult(
        CellResult.Value.NONE, Optional.of(failure), result.remarks(), result.declared());
  }

  private static String inWords(Duration time) {
    return time.toMillis() % 1000 == 0 ? time.toSeconds() + " s" : time.toMillis() + " ms";
  }

  @Override
  public void close() {
    clock.shutdownNow();
  }
}
