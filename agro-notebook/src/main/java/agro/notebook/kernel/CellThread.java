package agro.notebook.kernel;

import agro.notebook.bytecode.CellStopped;
import agro.notebook.display.Display;

/**
 * The thread on which all code runs that a reader has written. When it does not end in time after
 * its cell was stopped, it is left alone with what it does, and another one takes its place.
 */
final class CellThread {

  /** Room for recursion in cells: eight times what a thread has by default. */
  private static final long STACK_BYTES = 8L << 20;

  private static final long LOOK_MILLIS = 50;

  private final ThreadGroup group = new ThreadsOfCells();
  private final OutputSession session;
  private final ClassLoader loader;
  private Worker worker;

  /**
   * Starts the thread.
   *
   * @param session where its output goes
   * @param loader the loader of the classes of cells
   */
  CellThread(OutputSession session, ClassLoader loader) {
    this.session = session;
    this.loader = loader;
    this.worker = started();
  }

  private Worker started() {
    return new Worker(group, "cell", STACK_BYTES, loader);
  }

  /**
   * Runs code of a cell and waits for its end, but not longer than a stopped cell may take.
   *
   * @param cell the cell
   * @param code the code
   * @return what it returned
   * @throws CellStopped when the cell was stopped before it began, or did not end in time
   * @throws Throwable what it threw
   */
  <T> T call(RunningCell cell, Task.Code<T> code) throws Throwable {
    if (cell.isStopped()) {
      throw new CellStopped();
    }
    var task = worker().submit(() -> within(cell, code));
    while (!ended(task, cell)) {
      if (cell.isOverdue(0)) {
        leaveAlone(cell);
        throw new CellStopped();
      }
    }
    return task.result();
  }

  private static boolean ended(Task<?> task, RunningCell cell) {
    try {
      return task.ended(LOOK_MILLIS);
    } catch (InterruptedException passedOn) {
      cell.stop();
      return false;
    }
  }

  private <T> T within(RunningCell cell, Task.Code<T> code) throws Throwable {
    Display.connect(session);
    cell.enter();
    try {
      return code.run();
    } finally {
      cell.leave();
    }
  }

  private synchronized Worker worker() {
    if (!worker.isAlive()) {
      worker = started();
    }
    return worker;
  }

  private synchronized void leaveAlone(RunningCell cell) {
    cell.abandon();
    worker.letGo();
    worker = started();
  }

  synchronized void close() {
    worker.letGo();
  }
}
