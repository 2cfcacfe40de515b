package agro.notebook.jupyter;

import java.util.concurrent.locks.LockSupport;
import org.zeromq.ZMQ;

/**
 * Threads of the socket library that do not die. Its threads end on an {@code Error}, such as the
 * memory error of a cell that strikes the next one who asks for memory, and a kernel without them
 * hears and says nothing. Here their work begins again.
 */
final class LastingThreads {

  private static final long PAUSE_NANOS = 10_000_000L;
  private static final int TRIES = 200;

  private LastingThreads() {}

  /** A context whose threads last. */
  static ZMQ.Context context(Complaints complaints) {
    var context = ZMQ.context(1);
    context.setThreadFactor((work, name) -> thread(work, name, complaints));
    return context;
  }

  /**
   * Does something that must not be lost because a cell has just used up all memory. The cell is
   * about to give it back, so it is tried again.
   */
  static void insist(Runnable work) {
    for (var tries = 1; ; tries++) {
      try {
        work.run();
        return;
      } catch (OutOfMemoryError e) {
        SpareMemory.release();
        if (tries == TRIES) {
          throw e;
        }
        LockSupport.parkNanos(PAUSE_NANOS);
      }
    }
  }

  static Thread thread(Runnable work, String name, Complaints complaints) {
    var thread = new Thread(() -> lasting(work, name, complaints), "jupyter-" + name);
    thread.setDaemon(true);
    return thread;
  }

  private static void lasting(Runnable work, String name, Complaints complaints) {
    while (true) {
      try {
        work.run();
        return;
      } catch (Throwable trouble) {
        SpareMemory.release();
        complaints.about(name, trouble);
        LockSupport.parkNanos(PAUSE_NANOS);
      }
    }
  }
}
