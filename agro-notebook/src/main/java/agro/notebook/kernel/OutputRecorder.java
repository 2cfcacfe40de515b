package agro.notebook.kernel;

import agro.notebook.display.MimeBundle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keeps what a cell prints and shows, with neighbouring pieces of text joined. */
public final class OutputRecorder implements OutputSink {

  private final Optional<OutputRecorder> earlier;
  private final List<CellOutput> outputs = new ArrayList<>();
  private final StringBuilder open = new StringBuilder();
  private StandardStream openStream;
  private boolean clearing;

  private OutputRecorder(Optional<OutputRecorder> earlier) {
    this.earlier = earlier;
  }

  /**
   * A recorder of a first or only cell.
   *
   * @return an empty recorder
   */
  public static OutputRecorder first() {
    return new OutputRecorder(Optional.empty());
  }

  /**
   * A recorder of the next cell of a notebook, which may replace what an earlier cell has shown.
   *
   * @return an empty recorder that knows this one
   */
  public OutputRecorder next() {
    return new OutputRecorder(Optional.of(this));
  }

  @Override
  public synchronized void text(StandardStream stream, String text) {
    clearIfDue();
    if (openStream != stream) {
      closeText();
      openStream = stream;
    }
    open.append(text);
  }

  @Override
  public synchronized void show(String id, MimeBundle bundle) {
    clearIfDue();
    closeText();
    outputs.add(new CellOutput.Shown(id, bundle));
  }

  @Override
  public void update(String id, MimeBundle bundle) {
    replace(id, bundle);
    earlier.ifPresent(before -> before.update(id, bundle));
  }

  @Override
  public synchronized void clear(boolean wait) {
    clearing = true;
    if (!wait) {
      clearIfDue();
    }
  }

  private void clearIfDue() {
    if (clearing) {
      outputs.clear();
      open.setLength(0);
      openStream = null;
      clearing = false;
    }
  }

  private synchronized void replace(String id, MimeBundle bundle) {
    outputs.replaceAll(
        output ->
            output instanceof CellOutput.Shown shown && shown.id().equals(id)
                ? new CellOutput.Shown(id, bundle)
                : output);
  }

  private void closeText() {
    if (!open.isEmpty()) {
      outputs.add(new CellOutput.Printed(openStream, open.toString()));
      open.setLength(0);
    }
    openStream = null;
  }

  /**
   * What was recorded so far.
   *
   * @return the outputs in order
   */
  public synchronized List<CellOutput> outputs() {
    var all = new ArrayList<>(outputs);
    if (!open.isEmpty()) {
      all.add(new CellOutput.Printed(openStream, open.toString()));
    }
    all.removeIf(OutputRecorder::showsNothing);
    return List.copyOf(all);
  }

  /** What was taken away again by an update, such as the bar of a work that is done. */
  private static boolean showsNothing(CellOutput output) {
    return output instanceof CellOutput.Shown shown && shown.content().isEmpty();
  }
}
