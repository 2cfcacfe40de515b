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

  /**
   * Takes away what the running cell has printed and shown so far.
   *
   * @param wait whether to wait with that until the next output is there, so that nothing flickers
   */
  void clear(boolean wait);
}
