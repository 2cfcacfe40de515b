package agro.notebook.kernel;

import agro.notebook.display.DisplaySink;
import agro.notebook.display.MimeBundle;
import java.util.HashSet;
import java.util.Set;

/**
 * Leads what the threads of one evaluator print and show to the cell that runs now, or to the last
 * one when a thread goes on after its cell. What comes from a cell that was interrupted and has not
 * ended is marked as such, once for each cell that receives it.
 */
final class OutputSession implements DisplaySink {

  /** The sink of one cell. Its own lock, so that a sink which blocks holds up no later cell. */
  private static final class Outlet {
    private final OutputSink sink;
    private final Set<RunningCell> marked = new HashSet<>();

    Outlet(OutputSink sink) {
      this.sink = sink;
    }

    void markIfLeftBehind(StandardStream stream) {
      var cell = RunningCell.ofThisThread();
      if (cell != null && cell.isAbandoned() && marked.add(cell)) {
        sink.text(stream, "[From " + cell.name() + ", which was interrupted and has not ended:]\n");
      }
    }
  }

  private volatile Outlet outlet = new Outlet(OutputRecorder.first());
  private volatile boolean closed;

  void leadTo(OutputSink next) {
    outlet = new Outlet(next);
  }

  void text(StandardStream stream, String text) {
    var to = outlet;
    synchronized (to) {
      to.markIfLeftBehind(stream);
      to.sink.text(stream, text);
    }
  }

  void remark(String sentence) {
    text(StandardStream.ERROR, sentence + "\n");
  }

  @Override
  public void show(String id, MimeBundle bundle) {
    var to = outlet;
    synchronized (to) {
      to.markIfLeftBehind(StandardStream.ERROR);
      to.sink.show(id, bundle);
    }
  }

  @Override
  public void update(String id, MimeBundle bundle) {
    var to = outlet;
    synchronized (to) {
      to.sink.update(id, bundle);
    }
  }

  @Override
  public void clear(boolean wait) {
    var to = outlet;
    synchronized (to) {
      var cell = RunningCell.ofThisThread();
      if (cell == null || !cell.isAbandoned()) {
        to.sink.clear(wait);
      }
    }
  }

  boolean isClosed() {
    return closed;
  }

  void close() {
    closed = true;
  }
}
