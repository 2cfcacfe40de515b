package agro.notebook.bytecode;

/** Somebody's wish that certain threads stop running the code of cells. */
public interface StopRequest {

  /**
   * Whether the calling thread is one of those that have to stop. Asked by that thread itself, in
   * the middle of the code of a cell.
   *
   * @return true when the thread has to stop
   */
  boolean concernsThisThread();

  /**
   * Whether the wish is fulfilled, so that nobody needs to be asked any more.
   *
   * @return true when the request can be forgotten
   */
  boolean isOver();
}
