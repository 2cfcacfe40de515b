package agro.notebook.kernel;

import java.io.IOException;
import java.io.InputStream;

/**
 * Stands in for the standard input of the process: code of a cell reads what the reader of the cell
 * types, all other threads read what was there before. It cannot be closed by a cell.
 */
final class RoutedInput extends InputStream {

  private final InputStream before;

  RoutedInput(InputStream before) {
    this.before = before;
  }

  /** The lines of the running cell, also for a thread that an earlier cell has started. */
  private static TypedLines typed() {
    var cell = RunningCell.ofThisThread();
    return cell == null || cell.session().isClosed() ? null : cell.receiver().typed();
  }

  @Override
  public int read() throws IOException {
    var typed = typed();
    return typed == null ? before.read() : typed.read();
  }

  @Override
  public int read(byte[] bytes, int from, int length) throws IOException {
    var typed = typed();
    return typed == null ? before.read(bytes, from, length) : typed.read(bytes, from, length);
  }

  @Override
  public int available() throws IOException {
    var typed = typed();
    return typed == null ? before.available() : typed.available();
  }

  @Override
  public void close() {
    // The next cell reads again.
  }
}
