package agro.notebook.bytecode;

/**
 * What cells call in place of {@code System.exit}: a notebook is not ended by one of its cells.
 * Public because the code of cells calls it; not meant to be called by hand.
 */
public final class ProcessEnd {

  private ProcessEnd() {}

  /**
   * Refuses to end the process.
   *
   * @param status the exit status that was asked for
   * @throws IllegalStateException always
   */
  @SuppressWarnings("DoNotCallSuggester")
  public static void refuse(int status) {
    throw new IllegalStateException(
        "a cell cannot end the program with status "
            + status
            + ": it ends with its last statement, or earlier by an exception");
  }

  /**
   * Refuses to end the process.
   *
   * @param runtime not used
   * @param status the exit status that was asked for
   * @throws IllegalStateException always
   */
  public static void refuse(Runtime runtime, int status) {
    refuse(status);
  }
}
