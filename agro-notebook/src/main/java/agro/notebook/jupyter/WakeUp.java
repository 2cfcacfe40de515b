package agro.notebook.jupyter;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Pipe;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Ends the wait of a thread that waits for sockets. Only threads of the kernel may give the signal:
 * Java closes the pipe under a thread that is being interrupted, as cells are.
 */
final class WakeUp implements AutoCloseable {

  private final Pipe pipe;
  private final AtomicBoolean given = new AtomicBoolean();

  WakeUp() {
    try {
      pipe = Pipe.open();
      pipe.source().configureBlocking(false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What the thread waits for, beside its socket. */
  Pipe.SourceChannel source() {
    return pipe.source();
  }

  void signal() {
    if (given.compareAndSet(false, true)) {
      try {
        pipe.sink().write(ByteBuffer.wrap(new byte[] {1}));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** Takes the signal back; what was asked for before it must be looked at afterwards. */
  void clear() {
    try {
      var bytes = ByteBuffer.allocate(16);
      while (pipe.source().read(bytes) > 0) {
        bytes.clear();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    given.set(false);
  }

  @Override
  public void close() throws IOException {
    pipe.sink().close();
    pipe.source().close();
  }
}
