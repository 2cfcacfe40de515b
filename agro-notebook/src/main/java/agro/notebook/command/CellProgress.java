package agro.notebook.command;

import agro.notebook.run.CellOutcome;
import agro.notebook.run.RunListener;
import java.util.Locale;

/** Says which cell of a notebook runs: one line on a terminal, in a log one for each cell. */
final class CellProgress implements RunListener, AutoCloseable {

  private static final long SECOND = 1000;

  private final StatusLine line;
  private final Thread clock = new Thread(this::tick, "progress");
  private String cell = "starting";
  private long start = System.nanoTime();

  CellProgress(StatusLine line) {
    this.line = line;
    if (line.isRewritten()) {
      clock.setDaemon(true);
      clock.start();
    }
  }

  @Override
  public synchronized void cellStarts(int number, int total) {
    cell = "cell " + number + " of " + total;
    start = System.nanoTime();
    line.now(cell);
  }

  @Override
  public synchronized void cellEnded(CellOutcome outcome) {
    if (!line.isRewritten()) {
      line.stays(cell + seconds(outcome.time().toMillis() / 1000.0));
    }
  }

  private void tick() {
    try {
      while (true) {
        Thread.sleep(SECOND);
        tellTime();
      }
    } catch (InterruptedException over) {
      Thread.currentThread().interrupt();
    }
  }

  private synchronized void tellTime() {
    if (!clock.isInterrupted()) {
      line.now(cell + seconds((System.nanoTime() - start) / 1e9));
    }
  }

  private static String seconds(double seconds) {
    return String.format(Locale.ROOT, "  %.1f s", seconds);
  }

  @Override
  public synchronized void close() {
    clock.interrupt();
    line.wipe();
  }
}
