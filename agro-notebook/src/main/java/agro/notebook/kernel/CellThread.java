package agro.notebook.kernel;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** The one thread on which the code of cells runs. It never keeps the process alive. */
final class CellThread implements AutoCloseable {

  /** Room for recursion in cells: eight times what a thread has by default. */
  private static final long STACK_BYTES = 8L << 20;

  private final ExecutorService worker;
  private final Object lock = new Object();
  private Thread thread;
  private boolean running;
  private boolean stopped;

  /**
   * Prepares the thread.
   *
   * @param beforeAll what the thread does before the first piece of code
   */
  CellThread(Runnable beforeAll) {
    worker =
        Executors.newSingleThreadExecutor(
            work -> {
              Runnable prepared =
                  () -> {
                    beforeAll.run();
                    work.run();
                  };
              thread = new Thread(null, prepared, "cell", STACK_BYTES);
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * Runs code on the thread and waits for its end. When the waiting thread is interrupted, the code
   * is interrupted instead.
   *
   * @param code the code
   * @return what it returned
   * @throws Throwable what it threw
   */
  <T> T call(Callable<T> code) throws Throwable {
    var future = worker.submit(() -> marked(code));
    while (true) {
      try {
        return future.get();
      } catch (InterruptedException passedOn) {
        interrupt();
      } catch (ExecutionException thrown) {
        throw thrown.getCause();
      }
    }
  }

  private <T> T marked(Callable<T> code) throws Exception {
    synchronized (lock) {
      running = true;
      if (stopped) {
        Thread.currentThread().interrupt();
      }
    }
    try {
      return code.call();
    } finally {
      synchronized (lock) {
        running = false;
        Thread.interrupted();
      }
    }
  }

  /** Forgets that an earlier cell was stopped. */
  void beginCell() {
    synchronized (lock) {
      stopped = false;
    }
  }

  /** Interrupts the code that runs now, or, between two statements, the one that comes next. */
  void interrupt() {
    synchronized (lock) {
      stopped = true;
      if (running) {
        thread.interrupt();
      }
    }
  }

  /** Whether the cell was interrupted. */
  boolean wasInterrupted() {
    synchronized (lock) {
      return stopped;
    }
  }

  /**
   * Makes classes of snippets visible to code that asks the thread for its class loader.
   *
   * @param loader the loader of snippets
   */
  void useLoader(ClassLoader loader) {
    worker.execute(() -> Thread.currentThread().setContextClassLoader(loader));
  }

  @Override
  public void close() {
    worker.shutdownNow();
  }
}
