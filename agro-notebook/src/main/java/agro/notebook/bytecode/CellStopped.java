package agro.notebook.bytecode;

/**
 * Thrown in the middle of the code of a cell that its reader has stopped. An error, so that code
 * which catches exceptions lets it pass; it is thrown again and again until the cell has ended.
 */
public final class CellStopped extends Error {

  private static final long serialVersionUID = 1L;

  /** A stop that the reader asked for. */
  public CellStopped() {
    super("the cell was interrupted by its reader");
  }
}
