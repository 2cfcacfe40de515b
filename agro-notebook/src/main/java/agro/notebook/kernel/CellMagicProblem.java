package agro.notebook.kernel;

/** A magic cannot do what a cell asked for. */
public final class CellMagicProblem extends Exception {

  private static final long serialVersionUID = 1;

  /**
   * A problem in words.
   *
   * @param message what was read, what was expected and how to mend it; possibly several lines
   */
  public CellMagicProblem(String message) {
    super(message);
  }

  /**
   * A problem in words, and where it comes from.
   *
   * @param message what was read, what was expected and how to mend it; possibly several lines
   * @param cause what was thrown
   */
  public CellMagicProblem(String message, Throwable cause) {
    super(message, cause);
  }
}
