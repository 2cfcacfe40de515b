package agro.notebook.display;

/** Tells a value that fails from a reader who has had enough of waiting for it. */
final class Interruption {

  private Interruption() {}

  /**
   * Throws trouble on when the thread is interrupted: then a value is not at fault, and what comes
   * after it shall not be tried.
   *
   * @param trouble what was caught
   */
  static void passOn(Throwable trouble) {
    if (Thread.currentThread().isInterrupted()) {
      if (trouble instanceof Error error) {
        throw error;
      }
      if (trouble instanceof RuntimeException exception) {
        throw exception;
      }
    }
  }
}
