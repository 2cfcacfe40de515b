package agro.notebook.jupyter;

import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Sends what waits in the queue: outputs to all front ends, questions to the one asked. */
final class Publisher implements AutoCloseable {

  private final OutputQueue queue;
  private final WireFormat format;
  private final Complaints complaints;
  private final Thread thread = new Thread(this::loop, "jupyter-publisher");
  private Channel outputs;
  private Channel questions;

  Publisher(OutputQueue queue, WireFormat format, Complaints complaints) {
    this.queue = queue;
    this.format = format;
    this.complaints = complaints;
    thread.setDaemon(true);
  }

  /** Begins to send. */
  void start(Channel toAll, Channel toOne) {
    outputs = toAll;
    questions = toOne;
    thread.start();
  }

  OutputQueue queue() {
    return queue;
  }

  /** Publishes something of the kernel's own; never waits. */
  void publish(String type, JsonObject parent, JsonObject content) {
    queue.add(Publication.output(type, parent, content, 0));
  }

  /** Tells that the kernel works on a request or has finished it. */
  void status(JsonObject parent, String state) {
    var content = new JsonObject();
    content.addProperty("execution_state", state);
    publish("status", parent, content);
  }

  private void loop() {
    while (true) {
      try {
        var next = queue.take();
        if (next == null) {
          return;
        }
        send(next);
      } catch (Throwable trouble) {
        complaints.about(thread.getName(), trouble);
      }
    }
  }

  private void send(Publication next) throws InterruptedException {
    var toAll = next.to() == Publication.Destination.OUTPUTS;
    var frames = new ArrayList<byte[]>();
    LastingThreads.insist(
        () -> {
          frames.clear();
          frames.addAll(frames(next, toAll));
        });
    (toAll ? outputs : questions).sendWhenReady(frames);
  }

  private List<byte[]> frames(Publication next, boolean toAll) {
    var body = next.body();
    return format.frames(
        new Message(
            toAll ? List.of(next.type().getBytes(StandardCharsets.US_ASCII)) : next.route(),
            format.header(next.type()),
            next.parent(),
            body.metadata(),
            body.content(),
            body.buffers()));
  }

  /** Sends what waits, then ends. */
  @Override
  public void close() {
    queue.close();
  }

  void awaitEnd(long milliseconds) throws InterruptedException {
    thread.join(milliseconds);
  }
}
