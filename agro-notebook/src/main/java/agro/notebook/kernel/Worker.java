package agro.notebook.kernel;

import java.util.concurrent.LinkedBlockingQueue;

/**
 * A thread that does one piece of work after the other until it is let go. It never keeps the
 * process alive, and nothing that a piece of work throws ends it.
 */
final class Worker {

  private final LinkedBlockingQueue<Task<?>> work = new LinkedBlockingQueue<>();
  private final Thread thread;
  private volatile boolean letGo;

  /**
   * Starts the thread.
   *
   * @param group the group of the threads that the code starts
   * @param name the thread's name
   * @param stackBytes room for recursion
   * @param loader what the code asks for classes
   */
  Worker(ThreadGroup group, String name, long stackBytes, ClassLoader loader) {
    thread = new Thread(group, this::workOff, name, stackBytes);
    thread.setDaemon(true);
    thread.setContextClassLoader(loader);
    thread.start();
  }

  /**
   * Hands over a piece of work.
   *
   * @param code the work
   * @return the work, to be waited for
   */
  <T> Task<T> submit(Task.Code<T> code) {
    var task = new Task<>(code);
    work.add(task);
    return task;
  }

  private void workOff() {
    while (!letGo) {
      try {
        work.take().run();
      } catch (Throwable aimless) {
        // A stray interrupt, an asynchronous error or no memory: the next piece of work matters.
      }
    }
  }

  /** Lets the thread end after what it does now, which is interrupted. */
  void letGo() {
    letGo = true;
    thread.interrupt();
  }

  /** Lets the thread end when it has done everything that it was given. */
  void letGoWhenDone() {
    submit(() -> letGo = true);
  }

  boolean isAlive() {
    return thread.isAlive();
  }
}
