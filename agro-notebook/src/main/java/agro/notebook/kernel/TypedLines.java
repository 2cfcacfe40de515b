package agro.notebook.kernel;

import agro.notebook.bytecode.CellStopped;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.charset.Charset;
import java.util.Objects;
import java.util.concurrent.locks.ReentrantLock;

/**
 * What the reader of one cell types. A line is asked for when somebody reads and nothing is left,
 * and one call gives no more than the rest of one line, so that two readers in turn get a line
 * each.
 */
final class TypedLines {

  private final CellInput input;
  private final RunningCell cell;
  private final ReentrantLock turn = new ReentrantLock();
  private byte[] line = {};
  private int at;
  private boolean refused;

  TypedLines(CellInput input, RunningCell cell) {
    this.input = Objects.requireNonNull(input, "input");
    this.cell = cell;
  }

  /**
   * Asks for a line, whatever is left of the one before.
   *
   * @param prompt what to ask
   * @param hidden whether the answer must not be shown
   * @return the line without its line break
   * @throws IOException when nobody can answer
   */
  String ask(String prompt, boolean hidden) throws IOException {
    if (cell.isAbandoned()) {
      throw new CellStopped();
    }
    try {
      turn.lockInterruptibly();
      try {
        return input.readLine(prompt, hidden);
      } finally {
        turn.unlock();
      }
    } catch (InterruptedException stopped) {
      if (cell.isStopped()) {
        throw new CellStopped();
      }
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while waiting for an answer");
    }
  }

  int read() throws IOException {
    var one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  int read(byte[] bytes, int from, int length) throws IOException {
    Objects.checkFromIndexSize(from, length, bytes.length);
    if (length == 0) {
      return 0;
    }
    turn.lock();
    try {
      if (at == line.length) {
        // Readers of the standard input take it to be in the default charset.
        line = (asked() + "\n").getBytes(Charset.defaultCharset());
        at = 0;
      }
      var count = Math.min(length, line.length - at);
      System.arraycopy(line, at, bytes, from, count);
      at += count;
      return count;
    } finally {
      turn.unlock();
    }
  }

  private String asked() throws IOException {
    try {
      return ask("", false);
    } catch (InterruptedIOException interrupted) {
      throw interrupted;
    } catch (IOException nobody) {
      tellOnce(nobody);
      throw nobody;
    }
  }

  /** A {@code Scanner} keeps the reason of a failed read to itself, so it is printed as well. */
  private void tellOnce(IOException nobody) {
    if (!refused) {
      refused = true;
      cell.session().remark("Note: no input: " + nobody.getMessage() + ".");
    }
  }

  int available() {
    return line.length - at;
  }
}
