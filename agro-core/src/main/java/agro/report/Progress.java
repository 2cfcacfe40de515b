package agro.report;

import java.util.concurrent.CancellationException;
import java.util.function.Supplier;

/** Hears how far a long computation has come, and may end it. */
@FunctionalInterface
public interface Progress {

  /**
   * Tells how far the work has come. Called from the thread that does the work.
   *
   * @param what the part of the work, for example {@code "forecast"}
   * @param done steps done, 0 to {@code total}
   * @param total steps in all, at least 1
   * @return true to go on, false to cancel
   */
  boolean tell(String what, long done, long total);

  /**
   * A listener that hears nothing and never cancels, except that an interrupted thread ends.
   *
   * @return the silent listener
   */
  static Progress silent() {
    return (what, done, total) -> !Thread.currentThread().isInterrupted();
  }

  /**
   * A listener for a long computation that nobody gave one: where somebody has asked to hear of
   * such work on this thread, theirs, and otherwise the silent one.
   *
   * @return a listener for one computation
   */
  static Progress ofThread() {
    return ThreadListeners.next();
  }

  /**
   * Says who hears of long computations on this thread, and on every thread that it starts from now
   * on, when they are not given a listener.
   *
   * @param listeners gives a listener for each computation, or null for the silent one
   */
  static void listenOnThread(Supplier<Progress> listeners) {
    ThreadListeners.set(listeners);
  }

  /**
   * Tells how far the work has come and ends it when the listener asks for that.
   *
   * @param what the part of the work
   * @param done steps done
   * @param total steps in all
   * @throws CancellationException when the listener cancels
   */
  default void step(String what, long done, long total) {
    if (!tell(what, done, total)) {
      throw new CancellationException(what + " was cancelled after " + done + " of " + total);
    }
  }
}
