package agro.notebook.display;

import agro.report.Progress;
import java.util.Arrays;
import java.util.Collection;
import java.util.Iterator;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.function.LongSupplier;

/**
 * A bar that shows how far a long computation has come, how fast it is and how long it will take.
 * It appears when the work has lasted half a second, so that quick work shows nothing, and is drawn
 * at most ten times a second. In a notebook it stands among the outputs of the cell; in a plain
 * program it is a line on the error stream. Interrupting the thread cancels the work.
 *
 * <pre>{@code
 * for (var file : ProgressBar.over(files, "reading")) { ... }
 * var fit = timing.fit(seasons, ProgressBar.shown());
 * }</pre>
 */
public final class ProgressBar implements Progress {

  private static final long PATIENCE = 500_000_000;
  private static final double NANOS = 1e9;

  /** What becomes of the bar when the work is done. */
  enum Ending {
    /** A line says what was done and how long it took. */
    SUMMARY,
    /** Nothing stays. */
    REMOVED
  }

  private final Ending ending;
  private final LongSupplier clock;
  private ProgressFace face;
  private ProgressState latest;
  private boolean working;
  private boolean visible;
  private long begin;
  private long partBegin;
  private long ended;
  private long drawn;

  /**
   * A bar.
   *
   * @param face where it is seen
   * @param ending what becomes of it at the end
   * @param clock time in nanoseconds from any origin
   */
  ProgressBar(ProgressFace face, Ending ending, LongSupplier clock) {
    this.face = face;
    this.ending = ending;
    this.clock = clock;
    ended = clock.getAsLong() - PATIENCE - 1;
  }

  /**
   * A bar for a computation that takes a {@link Progress}; at its end a line stays that says how
   * long it took.
   *
   * @return a bar for one computation, or for several one after the other
   */
  public static Progress shown() {
    return bar(Ending.SUMMARY);
  }

  private static ProgressBar bar(Ending ending) {
    var sink = Display.sink();
    return new ProgressBar(
        sink == null ? ConsoleFace.ofProcess() : new DisplayFace(sink), ending, System::nanoTime);
  }

  /** A bar that leaves nothing behind, for work whose caller did not ask for one. */
  static Progress passing(DisplaySink sink) {
    return new ProgressBar(new DisplayFace(sink), Ending.REMOVED, System::nanoTime);
  }

  /**
   * Values of a loop with a bar that moves on with each of them.
   *
   * @param values the values; of a collection the bar knows how many there are
   * @param what the work, for example {@code "reading"}
   * @param <T> their type
   * @return the same values; taking the next one throws {@link CancellationException} when the
   *     thread was interrupted
   */
  public static <T> Iterable<T> over(Iterable<T> values, String what) {
    Objects.requireNonNull(values, "values");
    Objects.requireNonNull(what, "what");
    return () -> bar(Ending.SUMMARY).steps(values, what);
  }

  /**
   * Values of a loop over an array with a bar that moves on with each of them.
   *
   * @param values the values
   * @param what the work
   * @param <T> their type
   * @return the same values; taking the next one throws {@link CancellationException} when the
   *     thread was interrupted
   */
  public static <T> Iterable<T> over(T[] values, String what) {
    return over(Arrays.asList(values), what);
  }

  /** The values with this bar. */
  <T> Iterator<T> steps(Iterable<T> values, String what) {
    var total = values instanceof Collection<T> known ? known.size() : 0;
    return new Steps<>(values.iterator(), what, total);
  }

  @Override
  public boolean tell(String what, long done, long total) {
    return hear(what, done, total, total > 0 && done >= total);
  }

  private synchronized boolean hear(String what, long done, long total, boolean atEnd) {
    var now = clock.getAsLong();
    start(what, done, now);
    latest = new ProgressState(what, done, total, (now - partBegin) / NANOS);
    if (Thread.currentThread().isInterrupted()) {
      end(now, latest.stopped());
      return false;
    }
    if (atEnd) {
      end(now, ending == Ending.SUMMARY ? latest.summary() : null);
    } else if (now - begin >= PATIENCE && (!visible || now - drawn >= face.pauseNanos())) {
      face.draw(latest);
      visible = true;
      drawn = now;
    }
    return true;
  }

  /** A part that follows at once belongs to the same work; after a pause another work begins. */
  private void start(String what, long done, long now) {
    if (!working && now - ended > PATIENCE) {
      face = visible ? face.another() : face;
      visible = false;
      begin = now;
    }
    if (!working || !latest.what().equals(what) || done < latest.done()) {
      partBegin = now;
      working = true;
    }
  }

  private void end(long now, String line) {
    working = false;
    ended = now;
    drawn = now - face.pauseNanos();
    if (visible && line != null) {
      face.replace(line);
    } else if (visible) {
      face.remove();
    }
  }

  /** Takes a step with each value. */
  private final class Steps<T> implements Iterator<T> {
    private final Iterator<T> values;
    private final String what;
    private final long total;
    private long taken;

    Steps(Iterator<T> values, String what, long total) {
      this.values = values;
      this.what = what;
      this.total = total;
      step(false);
    }

    private void step(boolean atEnd) {
      if (!hear(what, taken, taken > total ? 0 : total, atEnd)) {
        throw new CancellationException(what + " was cancelled after " + taken);
      }
    }

    @Override
    public boolean hasNext() {
      var more = values.hasNext();
      if (!more && working) {
        step(true);
      } else if (more) {
        step(false);
      }
      return more;
    }

    @Override
    public T next() {
      var value = values.next();
      taken++;
      return value;
    }
  }
}
