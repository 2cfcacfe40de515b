package agro.notebook.kernel;

/**
 * A piece of work for another thread. Waiting for it needs no memory, so that it can be waited for
 * while the work uses up all there is.
 *
 * @param <T> what it results in
 */
final class Task<T> {

  /**
   * What is to be done.
   *
   * @param <T> what it results in
   */
  interface Code<T> {
    /**
     * Does it.
     *
     * @return the result
     * @throws Throwable whatever goes wrong
     */
    T run() throws Throwable;
  }

  private Code<T> code;
  private T result;
  private Throwable thrown;
  private boolean done;

  Task(Code<T> code) {
    this.code = code;
  }

  /** Does the work, on the calling thread. */
  void run() {
    T found = null;
    Throwable trouble = null;
    try {
      found = code.run();
    } catch (Throwable fromCode) {
      trouble = fromCode;
    } finally {
      end(found, trouble);
    }
  }

  private synchronized void end(T found, Throwable trouble) {
    code = null;
    result = found;
    thrown = trouble;
    done = true;
    notifyAll();
  }

  synchronized boolean isDone() {
    return done;
  }

  /**
   * Waits for the end of the work; callers look again, so a wait may well end too early.
   *
   * @param millis how long at most
   * @return whether it has ended
   * @throws InterruptedException when the waiting thread is interrupted
   */
  @SuppressWarnings("WaitNotInLoop")
  synchronized boolean ended(long millis) throws InterruptedException {
    if (!done) {
      wait(millis);
    }
    return done;
  }

  /**
   * What the work resulted in, once it has ended.
   *
   * @return the result
   * @throws Throwable what the work threw
   */
  synchronized T result() throws Throwable {
    if (thrown != null) {
      throw thrown;
    }
    return result;
  }
}
