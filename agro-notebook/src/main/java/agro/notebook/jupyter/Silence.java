package agro.notebook.jupyter;

import agro.notebook.display.MimeBundle;
import agro.notebook.kernel.OutputSink;
import agro.notebook.kernel.StandardStream;

/** Takes outputs that nobody wants to see. */
final class Silence implements OutputSink {

  @Override
  public void text(StandardStream stream, String text) {}

  @Override
  public void show(String id, MimeBundle bundle) {}

  @Override
  public void update(String id, MimeBundle bundle) {}

  @Override
  public void clear(boolean wait) {}
}
