package agro.notebook.kernel;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * The two streams that one cell prints to. Each cell has its own, so that a cell which was left
 * behind in the middle of a line holds up nobody else.
 */
final class CellStreams {

  private final PrintStream output;
  private final PrintStream error;

  CellStreams(OutputSession session) {
    output = printing(StandardStream.OUTPUT, session);
    error = printing(StandardStream.ERROR, session);
  }

  private static PrintStream printing(StandardStream stream, OutputSession session) {
    return new PrintStream(new Text(stream, session), true, StandardCharsets.UTF_8);
  }

  PrintStream get(StandardStream stream) {
    return stream == StandardStream.OUTPUT ? output : error;
  }

  /** Turns bytes into text although a character may be cut in two. */
  private static final class Text extends OutputStream {
    private final StandardStream stream;
    private final OutputSession session;
    private final CharsetDecoder utf8 =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPLACE)
            .onUnmappableCharacter(CodingErrorAction.REPLACE);
    private ByteBuffer rest = ByteBuffer.allocate(0);

    Text(StandardStream stream, OutputSession session) {
      this.stream = stream;
      this.session = session;
    }

    @Override
    public void write(int oneByte) {
      write(new byte[] {(byte) oneByte}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) {
      var text = decoded(ByteBuffer.wrap(bytes, from, length));
      if (!text.isEmpty()) {
        session.text(stream, text);
      }
    }

    private synchronized String decoded(ByteBuffer more) {
      var bytes = ByteBuffer.allocate(rest.remaining() + more.remaining()).put(rest).put(more);
      bytes.flip();
      var text = CharBuffer.allocate(bytes.remaining() + 1);
      utf8.decode(bytes, text, false);
      rest = bytes.slice();
      return text.flip().toString();
    }
  }
}
