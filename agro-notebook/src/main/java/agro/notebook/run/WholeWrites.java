package agro.notebook.run;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Writing that the end of the process does not cut in two: a run's files are all there or none of
 * them, also when the user or another process stops the program meanwhile.
 */
public final class WholeWrites {

  private static final long PATIENCE_SECONDS = 10;
  private static final ReentrantLock WRITING = new ReentrantLock();
  private static boolean guarded;

  private WholeWrites() {}

  /**
   * Writes; the process does not end before that is done.
   *
   * @param writing what to do
   */
  static void whole(Runnable writing) {
    guard();
    WRITING.lock();
    try {
      writing.run();
    } finally {
      WRITING.unlock();
    }
  }

  /**
   * Ends this process at once, but not in the middle of writing.
   *
   * @param status the exit status
   */
  public static void endProcess(int status) {
    holdWrites();
    Runtime.getRuntime().halt(status);
  }

  private static synchronized void guard() {
    if (!guarded) {
      guarded = true;
      Runtime.getRuntime().addShutdownHook(new Thread(WholeWrites::holdWrites, "last writes"));
    }
  }

  /** Waits for what is being written and lets nothing new begin. */
  private static void holdWrites() {
    try {
      if (!WRITING.tryLock(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        System.err.println("The program ended while it was still writing.");
      }
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }
}
