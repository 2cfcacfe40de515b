package agro.notebook.jupyter;

import agro.notebook.kernel.StandardStream;
import com.google.gson.JsonObject;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * What waits to be published, in order. Printed text is gathered until 50 ms have passed, 64 KiB
 * are there or something else follows it. When 64 MiB wait, because a front end reads slowly,
 * whoever adds more waits too.
 */
final class OutputQueue {

  /** How many bytes may wait in a kernel. */
  static final long USUAL_LIMIT = 64L << 20;

  private static final int PIECE = 64 << 10;
  private static final long PATIENCE_NANOS = 50_000_000L;

  private final Deque<Entry> entries = new ArrayDeque<>();
  private final long limit;
  private long waitingBytes;
  private long releases;
  private boolean closed;

  /**
   * A queue.
   *
   * @param limit how many bytes may wait before whoever adds more waits too
   */
  OutputQueue(long limit) {
    this.limit = limit;
  }

  /** Adds something of the kernel's own, which never waits. */
  synchronized void add(Publication publication) {
    append(new Whole(publication));
  }

  /**
   * Adds an output of a cell, waiting for room.
   *
   * @throws InterruptedException when the thread is interrupted, or {@link #release} is called,
   *     while it waits
   */
  synchronized void addOutput(Publication publication) throws InterruptedException {
    awaitRoom(publication.size());
    append(new Whole(publication));
  }

  /**
   * Adds printed text, waiting for room.
   *
   * @throws InterruptedException as above
   */
  synchronized void addText(JsonObject parent, StandardStream stream, String text)
      throws InterruptedException {
    var from = 0;
    while (from < text.length()) {
      var tail = entries.peekLast();
      var open = tail instanceof Printed printed && printed.takes(parent, stream);
      var room = open ? PIECE - ((Printed) tail).text.length() : PIECE;
      var to = endOfPiece(text, from, room);
      awaitRoom(to - from);
      appendText(parent, stream, text.substring(from, to));
      from = to;
    }
  }

  private static int endOfPiece(String text, int from, int room) {
    var to = Math.min(text.length(), from + room);
    var cutsCharacter = to < text.length() && Character.isHighSurrogate(text.charAt(to - 1));
    return cutsCharacter ? to - 1 : to;
  }

  private void appendText(JsonObject parent, StandardStream stream, String text) {
    if (entries.peekLast() instanceof Printed printed && printed.takes(parent, stream)) {
      printed.text.append(text);
      waitingBytes += text.length();
      if (printed.isFull()) {
        notifyAll();
      }
    } else {
      append(new Printed(parent, stream, new StringBuilder(text), System.nanoTime()));
    }
  }

  private void append(Entry entry) {
    entries.add(entry);
    waitingBytes += entry.size();
    notifyAll();
  }

  private void awaitRoom(long size) throws InterruptedException {
    var before = releases;
    while (waitingBytes > 0 && waitingBytes + size > limit && !closed) {
      wait();
      if (releases != before) {
        throw new InterruptedException("interrupted while the front end did not read");
      }
    }
  }

  /** Ends the waiting of all who wait for room; what they wanted to add is lost. */
  synchronized void release() {
    releases++;
    notifyAll();
  }

  /** Lets nobody wait any more. */
  synchronized void close() {
    closed = true;
    notifyAll();
  }

  /**
   * Takes the next publication, waiting until there is one.
   *
   * @return the publication, or null when the queue is closed and empty
   */
  synchronized Publication take() throws InterruptedException {
    while (true) {
      var head = entries.peek();
      if (head == null) {
        if (closed) {
          return null;
        }
        wait();
      } else {
        var patience = closed || entries.size() > 1 ? 0 : head.patience(System.nanoTime());
        if (patience <= 0) {
          entries.remove();
          waitingBytes -= head.size();
          notifyAll();
          return head.publication();
        }
        wait(patience / 1_000_000, (int) (patience % 1_000_000));
      }
    }
  }

  /** How many bytes wait. */
  synchronized long waiting() {
    return waitingBytes;
  }

  private sealed interface Entry permits Whole, Printed {
    long size();

    /** How many nanoseconds more may pass before it is sent. */
    long patience(long now);

    Publication publication();
  }

  private record Whole(Publication publication) implements Entry {
    @Override
    public long size() {
      return publication.size();
    }

    @Override
    public long patience(long now) {
      return 0;
    }
  }

  private record Printed(JsonObject parent, StandardStream stream, StringBuilder text, long since)
      implements Entry {

    boolean takes(JsonObject otherParent, StandardStream otherStream) {
      return parent.equals(otherParent) && stream == otherStream && !isFull();
    }

    /** Whether there is no room for a character of two halves. */
    boolean isFull() {
      return text.length() >= PIECE - 1;
    }

    @Override
    public long size() {
      return text.length();
    }

    @Override
    public long patience(long now) {
      return isFull() ? 0 : since + PATIENCE_NANOS - now;
    }

    @Override
    public Publication publication() {
      var content = new JsonObject();
      content.addProperty("name", stream.word());
      content.addProperty("text", text.toString());
      return Publication.output("stream", parent, content, text.length());
    }
  }
}
