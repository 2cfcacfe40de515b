package agro.notebook.jupyter;

import agro.notebook.kernel.CellEvaluator;
import agro.notebook.kernel.CellSource;
import java.util.function.BooleanSupplier;

/** The evaluator, opened and warmed up while the kernel already answers its front end. */
final class WarmEvaluator {

  private CellEvaluator evaluator;
  private Throwable trouble;

  /**
   * Begins to open.
   *
   * @param next what is done afterwards on the same thread
   */
  void start(Runnable next) {
    Runnable work =
        () -> {
          open();
          next.run();
        };
    var thread = new Thread(work, "jupyter-warm-up");
    thread.setDaemon(true);
    thread.start();
  }

  private void open() {
    try {
      var opened = CellEvaluator.open();
      opened.evaluate(new CellSource("warm-up", "1 + 1"), new Silence());
      settle(opened, null);
    } catch (Throwable e) {
      settle(null, e);
    }
  }

  private synchronized void settle(CellEvaluator opened, Throwable problem) {
    evaluator = opened;
    trouble = problem;
    notifyAll();
  }

  /**
   * Waits for the evaluator.
   *
   * @param givenUp whether nobody wants it any more; looked at after every {@link #lookAgain}
   * @return the evaluator, or null when nobody wants it
   * @throws IllegalStateException when it could not be opened
   */
  synchronized CellEvaluator await(BooleanSupplier givenUp) throws InterruptedException {
    while (evaluator == null && trouble == null && !givenUp.getAsBoolean()) {
      wait();
    }
    if (trouble != null) {
      throw new IllegalStateException("cells of Java cannot be run here: " + trouble, trouble);
    }
    return evaluator;
  }

  /** The evaluator, waiting for it as long as it takes. */
  CellEvaluator get() throws InterruptedException {
    return await(() -> false);
  }

  /** Lets those who wait look whether they still want it. */
  synchronized void lookAgain() {
    notifyAll();
  }

  /** Interrupts the cell that runs, if there is an evaluator already. */
  void interrupt() {
    CellEvaluator opened;
    synchronized (this) {
      opened = evaluator;
    }
    if (opened != null) {
      opened.interrupt();
    }
  }

  /** Closes the evaluator, if there is one. */
  void close() {
    CellEvaluator opened;
    synchronized (this) {
      opened = evaluator;
    }
    if (opened != null) {
      opened.close();
    }
  }
}
