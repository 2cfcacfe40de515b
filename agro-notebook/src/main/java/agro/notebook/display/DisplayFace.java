package agro.notebook.display;

/** A bar among the outputs of a cell. */
final class DisplayFace implements ProgressFace {

  private static final long TENTH_OF_A_SECOND = 100_000_000;

  private final DisplaySink sink;
  private String id;

  DisplayFace(DisplaySink sink) {
    this.sink = sink;
  }

  @Override
  public long pauseNanos() {
    return TENTH_OF_A_SECOND;
  }

  @Override
  public void draw(ProgressState state) {
    put(state.bundle());
  }

  private void put(MimeBundle bundle) {
    if (id == null) {
      id = Display.newName();
      sink.show(id, bundle);
    } else {
      sink.update(id, bundle);
    }
  }

  @Override
  public void replace(String line) {
    put(MimeBundle.text(line));
  }

  @Override
  public void remove() {
    if (id != null) {
      sink.update(id, MimeBundle.EMPTY);
    }
  }

  @Override
  public ProgressFace another() {
    return new DisplayFace(sink);
  }
}
