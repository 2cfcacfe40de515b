package agro.notebook.kernel;

import agro.notebook.bytecode.CellStopped;

/** The threads that cells of one evaluator start. One that was stopped ends without a word. */
final class ThreadsOfCells extends ThreadGroup {

  ThreadsOfCells() {
    super("cells");
  }

  @Override
  public void uncaughtException(Thread thread, Throwable thrown) {
    if (!(thrown instanceof CellStopped)) {
      super.uncaughtException(thread, thrown);
    }
  }
}
