package agro.notebook.jupyter;

/**
 * Interrupts the cell that runs, from any thread. A cell that is not yet with the evaluator, or is
 * just on its way there, does not slip through: the wish is remembered, and told to the evaluator a
 * second time when the cell goes on.
 */
final class Interruption {

  private static final long AGAIN_MILLIS = 250;

  private final WarmEvaluator evaluator;
  private final OutputQueue queue;
  private boolean running;
  private boolean asked;
  private long cell;

  Interruption(WarmEvaluator evaluator, OutputQueue queue) {
    this.evaluator = evaluator;
    this.queue = queue;
  }

  synchronized void begin() {
    running = true;
    asked = false;
    cell++;
  }

  synchronized void end() {
    running = false;
    notifyAll();
  }

  /** Whether the running cell is to end. */
  synchronized boolean isAsked() {
    return asked;
  }

  /** Ends the running cell; without one it does nothing. */
  void interrupt() {
    synchronized (this) {
      if (!running) {
        return;
      }
      if (!asked) {
        asked = true;
        insist(cell);
      }
    }
    evaluator.lookAgain();
    evaluator.interrupt();
    queue.release();
  }

  private void insist(long meant) {
    var thread = new Thread(() -> interruptAgain(meant), "jupyter-interrupt");
    thread.setDaemon(true);
    thread.start();
  }

  private void interruptAgain(long meant) {
    try {
      synchronized (this) {
        var end = System.nanoTime() + AGAIN_MILLIS * 1_000_000;
        var rest = AGAIN_MILLIS;
        while (running && cell == meant && rest > 0) {
          wait(rest);
          rest = (end - System.nanoTime()) / 1_000_000;
        }
        if (!running || cell != meant) {
          return;
        }
      }
      evaluator.interrupt();
      queue.release();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
