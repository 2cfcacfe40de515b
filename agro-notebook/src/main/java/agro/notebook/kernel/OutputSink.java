package agro.notebook.kernel;

import agro.notebook.display.DisplaySink;

/** Takes what a cell prints and shows while it runs, in the order in which it happens. */
public interface OutputSink extends DisplaySink {

  /**
   * Takes printed text. Called from any thread, one call at a time.
   *
   * @param stream the stream it was printed to
   * @param text a piece of text, possibly a part of a line
   */
  void text(StandardStream stream, String text);
}
