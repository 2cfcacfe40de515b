package agro.notebook.jupyter;

/** Takes the comms that front ends open under one name. */
@FunctionalInterface
public interface CommTarget {

  /**
   * A front end has opened a comm. Called as if it stood in a cell: what it prints is shown, and it
   * can be interrupted.
   *
   * @param comm the comm, to which listeners can now be added
   * @param first what came with it
   */
  void opened(Comm comm, CommMessage first);
}
