package agro.notebook.kernel;

import agro.notebook.display.Display;
import agro.notebook.display.DisplaySink;
import agro.notebook.display.MimeBundle;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;

/**
 * Leads what the threads of one evaluator print and show to the cell that runs now, or to the last
 * one when a thread goes on after its cell.
 */
final class OutputSession implements DisplaySink {

  private static final InheritableThreadLocal<OutputSession> CURRENT =
      new InheritableThreadLocal<>();

  private final Map<StandardStream, Decoder> decoders = new EnumMap<>(StandardStream.class);
  private OutputSink sink = OutputRecorder.first();
  private volatile boolean closed;

  OutputSession() {
    for (var stream : StandardStream.values()) {
      decoders.put(stream, new Decoder());
    }
  }

  /**
   * The session that the calling thread belongs to.
   *
   * @return the open session, or null when it belongs to none
   */
  static OutputSession current() {
    var session = CURRENT.get();
    return session == null || session.closed ? null : session;
  }

  /** Makes the calling thread, and all that it starts, a part of this session. */
  void adoptThread() {
    CURRENT.set(this);
    Display.connect(this);
  }

  synchronized void leadTo(OutputSink next) {
    sink = next;
  }

  synchronized void print(StandardStream stream, byte[] bytes, int from, int length) {
    var text = decoders.get(stream).decode(ByteBuffer.wrap(bytes, from, length));
    if (!text.isEmpty()) {
      sink.text(stream, text);
    }
  }

  synchronized void remark(String sentence) {
    sink.text(StandardStream.ERROR, sentence + "\n");
  }

  @Override
  public synchronized void show(String id, MimeBundle bundle) {
    sink.show(id, bundle);
  }

  @Override
  public synchronized void update(String id, MimeBundle bundle) {
    sink.update(id, bundle);
  }

  void close() {
    closed = true;
  }

  /** Turns bytes into text although a character may be cut in two. */
  private static final class Decoder {
    private final CharsetDecoder utf8 =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPLACE)
            .onUnmappableCharacter(CodingErrorAction.REPLACE);
    private ByteBuffer rest = ByteBuffer.allocate(0);

    String decode(ByteBuffer more) {
      var bytes = ByteBuffer.allocate(rest.remaining() + more.remaining()).put(rest).put(more);
      bytes.flip();
      var text = CharBuffer.allocate(bytes.remaining() + 1);
      utf8.decode(bytes, text, false);
      rest = bytes.slice();
      return text.flip().toString();
    }
  }
}
