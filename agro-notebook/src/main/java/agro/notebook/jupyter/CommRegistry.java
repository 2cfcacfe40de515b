package agro.notebook.jupyter;

import com.google.gson.JsonObject;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;

/** The targets and the open comms of one kernel. */
final class CommRegistry {

  private final OutputQueue queue;
  private final String session;
  private final AtomicLong count = new AtomicLong();
  private final Map<String, CommTarget> targets = new ConcurrentHashMap<>();
  private final Map<String, Comm> open = new ConcurrentHashMap<>();
  private volatile JsonObject parent = new JsonObject();

  CommRegistry(OutputQueue queue, String session) {
    this.queue = queue;
    this.session = session;
  }

  /** What is sent from now on belongs to this request. */
  void beginRequest(JsonObject header) {
    parent = header;
  }

  void register(String target, CommTarget opened) {
    targets.put(target, opened);
  }

  void unregister(String target) {
    targets.remove(target);
  }

  boolean isOpen(Comm comm) {
    return open.get(comm.id()) == comm;
  }

  Comm open(String target, Map<String, ?> data) {
    var comm = new Comm(this, session + "-comm-" + count.incrementAndGet(), target);
    var content = content(comm.id(), data);
    content.addProperty("target_name", target);
    open.put(comm.id(), comm);
    publish("comm_open", content, List.of());
    return comm;
  }

  void send(Comm comm, Map<String, ?> data, List<byte[]> buffers) {
    if (!isOpen(comm)) {
      throw new IllegalStateException(
          "this comm (" + comm.target() + ") is closed; open another one");
    }
    publish("comm_msg", content(comm.id(), data), buffers);
  }

  void close(Comm comm) {
    if (open.remove(comm.id(), comm)) {
      publish("comm_close", content(comm.id(), Map.of()), List.of());
    }
  }

  /**
   * What a {@code comm_open} asks to be done, in place of a comm that had the id before.
   *
   * @return the code to run, or null when nobody waits for this target; then it is closed again
   */
  Runnable opened(Message message) {
    var id = Json.text(message.content(), "comm_id", "");
    var name = Json.text(message.content(), "target_name", "");
    var target = targets.get(name);
    if (target == null || id.isEmpty()) {
      publish("comm_close", content(id, Map.of()), List.of());
      return null;
    }
    var comm = new Comm(this, id, name);
    open.put(id, comm);
    return () -> target.opened(comm, CommMessage.of(message));
  }

  /** What a {@code comm_msg} asks to be done; null when there is no such comm. */
  Runnable received(Message message) {
    var comm = open.get(Json.text(message.content(), "comm_id", ""));
    return comm == null ? null : () -> comm.received(CommMessage.of(message));
  }

  /** What a {@code comm_close} asks to be done; null when there is no such comm. */
  Runnable closed(Message message) {
    var comm = open.remove(Json.text(message.content(), "comm_id", ""));
    return comm == null ? null : () -> comm.closedByFrontEnd(CommMessage.of(message));
  }

  /** The content of a {@code comm_info_reply}. */
  JsonObject info(Request request) {
    var target = Json.text(request.content(), "target_name", "");
    var comms = new JsonObject();
    for (var comm : open.values()) {
      if (target.isEmpty() || comm.target().equals(target)) {
        var info = new JsonObject();
        info.addProperty("target_name", comm.target());
        comms.add(comm.id(), info);
      }
    }
    var reply = Json.status("ok");
    reply.add("comms", comms);
    return reply;
  }

  private static JsonObject content(String id, Map<String, ?> data) {
    var content = new JsonObject();
    content.addProperty("comm_id", id);
    content.add("data", JsonValues.object(data));
    return content;
  }

  private void publish(String type, JsonObject content, List<byte[]> buffers) {
    var size = buffers.stream().mapToLong(buffer -> buffer.length).sum();
    var body = new Publication.Body(new JsonObject(), content, buffers);
    try {
      queue.addOutput(
          new Publication(
              Publication.Destination.OUTPUTS, List.of(), type, parent, body, 512 + size));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      var ended = new CancellationException("interrupted while the front end did not read");
      ended.initCause(e);
      throw ended;
    }
  }
}
