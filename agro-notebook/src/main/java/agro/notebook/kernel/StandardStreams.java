package agro.notebook.kernel;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Puts itself in the place of the process's standard streams. Threads of an evaluator print to
 * their cell; all other threads print where they printed before.
 */
final class StandardStreams {

  private static PrintStream routedOutput;
  private static PrintStream routedError;

  private StandardStreams() {}

  /** Takes the place of the standard streams, again if somebody else has taken it meanwhile. */
  static synchronized void install() {
    if (System.out != routedOutput) {
      routedOutput = routed(StandardStream.OUTPUT, System.out);
      System.setOut(routedOutput);
    }
    if (System.err != routedError) {
      routedError = routed(StandardStream.ERROR, System.err);
      System.setErr(routedError);
    }
  }

  private static PrintStream routed(StandardStream stream, PrintStream before) {
    return new PrintStream(new Route(stream, before), true, StandardCharsets.UTF_8);
  }

  private static final class Route extends OutputStream {
    private final StandardStream stream;
    private final PrintStream before;

    Route(StandardStream stream, PrintStream before) {
      this.stream = stream;
      this.before = before;
    }

    @Override
    public void write(int oneByte) throws IOException {
      write(new byte[] {(byte) oneByte}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) {
      var session = OutputSession.current();
      if (session == null) {
        before.write(bytes, from, length);
      } else {
        session.print(stream, bytes, from, length);
      }
    }

    @Override
    public void flush() {
      if (OutputSession.current() == null) {
        before.flush();
      }
    }
  }
}
