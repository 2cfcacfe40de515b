package agro.notebook.display;

/** Takes what a cell shows while it runs. Called from any thread. */
public interface DisplaySink {

  /**
   * Shows something below what was shown before.
   *
   * @param id name under which it can be replaced later
   * @param bundle what to show
   */
  void show(String id, MimeBundle bundle);

  /**
   * Replaces something that was shown.
   *
   * @param id the name it was shown under
   * @param bundle what to show instead, wherever that name was shown
   */
  void update(String id, MimeBundle bundle);
}
