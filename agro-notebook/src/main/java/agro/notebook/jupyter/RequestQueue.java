package agro.notebook.jupyter;

import java.util.ArrayDeque;
import java.util.Deque;

/** Requests that wait for their turn, in the order in which they came. */
final class RequestQueue {

  /** How long requests that are on their way already may take to arrive. */
  private static final long ON_THE_WAY_MILLIS = 10;

  private final Deque<Request> waiting = new ArrayDeque<>();
  private boolean closed;

  synchronized void add(Request request) {
    waiting.add(request);
    notifyAll();
  }

  /**
   * Takes the next request, waiting for one.
   *
   * @return the request, or null when the queue is closed
   */
  synchronized Request take() throws InterruptedException {
    while (waiting.isEmpty() && !closed) {
      wait();
    }
    return closed ? null : waiting.remove();
  }

  /** Gives no more requests out. */
  synchronized void close() {
    closed = true;
    notifyAll();
  }

  /**
   * Marks the cells that wait as aborted, because the one before them failed. Cells sent before
   * their front end could know of the failure count as waiting.
   */
  synchronized void abortWaitingCells() throws InterruptedException {
    var end = System.nanoTime() + ON_THE_WAY_MILLIS * 1_000_000;
    for (var rest = ON_THE_WAY_MILLIS; rest > 0; rest = (end - System.nanoTime()) / 1_000_000) {
      wait(rest);
    }
    waiting.stream()
        .filter(request -> request.type().equals("execute_request"))
        .forEach(Request::abort);
  }
}
