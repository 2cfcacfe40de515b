package agro.notebook.jupyter;

import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** A small front end for tests. Used by one thread. */
final class KernelClient implements AutoCloseable {

  /** How long a test waits for something that must come. */
  static final int PATIENCE_MILLIS = 60_000;

  private static final AtomicInteger CLIENTS = new AtomicInteger();

  /** The sockets that a client talks to. */
  enum Lane {
    SHELL,
    CONTROL,
    STDIN,
    IOPUB,
    HEARTBEAT
  }

  private final ZContext context = new ZContext();
  private final Map<Lane, ZMQ.Socket> sockets = new HashMap<>();
  private final List<Message> outputs = new ArrayList<>();
  private final List<Message> replies = new ArrayList<>();
  private final WireFormat format;
  private final ConnectionFile connection;

  private KernelClient(ConnectionFile connection) {
    this.connection = connection;
    var name = "client-" + CLIENTS.incrementAndGet();
    format = new WireFormat(MessageSigner.of(connection.signature()), name);
    var ports = connection.ports();
    connect(Lane.SHELL, SocketType.DEALER, connection.endpoint(ports.shell()), name);
    connect(Lane.CONTROL, SocketType.DEALER, connection.endpoint(ports.control()), name);
    connect(Lane.STDIN, SocketType.DEALER, connection.endpoint(ports.stdin()), name);
    connect(Lane.IOPUB, SocketType.SUB, connection.endpoint(ports.iopub()), name);
    connect(Lane.HEARTBEAT, SocketType.REQ, connection.endpoint(ports.heartbeat()), name);
  }

  /** Connects to a kernel, and waits until it answers and its outputs arrive. */
  static KernelClient connect(ConnectionFile connection) {
    var client = new KernelClient(connection);
    var end = System.nanoTime() + PATIENCE_MILLIS * 1_000_000L;
    while (System.nanoTime() < end) {
      var id = client.send(Lane.SHELL, "kernel_info_request", new JsonObject());
      if (client.next(Lane.SHELL, PATIENCE_MILLIS) == null) {
        break;
      }
      client.drain(100);
      if (client.outputs.stream().anyMatch(output -> isFor(output, id))) {
        client.forget();
        return client;
      }
    }
    client.close();
    throw new AssertionError("the kernel does not answer");
  }

  private void connect(Lane lane, SocketType type, String address, String name) {
    var socket = context.createSocket(type);
    socket.setLinger(0);
    if (type == SocketType.DEALER) {
      socket.setRcvHWM(0);
      socket.setIdentity(name.getBytes(StandardCharsets.US_ASCII));
    } else if (type == SocketType.SUB) {
      // What the test does not take is not taken off the kernel's hands either.
      socket.setRcvHWM(8);
      socket.subscribe(new byte[0]);
    }
    socket.connect(address);
    sockets.put(lane, socket);
  }

  /** Sends a message and gives its id. */
  String send(Lane lane, String type, JsonObject content) {
    var header = format.header(type);
    send(lane, message(header, content));
    return Json.text(header, "msg_id", "");
  }

  Message message(JsonObject header, JsonObject content) {
    return new Message(List.of(), header, new JsonObject(), new JsonObject(), content, List.of());
  }

  void send(Lane lane, Message message) {
    sendFrames(lane, format.frames(message));
  }

  void sendFrames(Lane lane, List<byte[]> frames) {
    sendFrames(sockets.get(lane), frames);
  }

  static void sendFrames(ZMQ.Socket socket, List<byte[]> frames) {
    for (var at = 0; at < frames.size(); at++) {
      socket.send(frames.get(at), at < frames.size() - 1 ? ZMQ.SNDMORE : 0);
    }
  }

  /** Where its kernel listens. */
  ConnectionFile connection() {
    return connection;
  }

  WireFormat format() {
    return format;
  }

  /** The next message of a socket, or null when none comes. */
  Message next(Lane lane, int milliseconds) {
    var socket = sockets.get(lane);
    socket.setReceiveTimeOut(milliseconds);
    var frame = socket.recv();
    if (frame == null) {
      return null;
    }
    var frames = new ArrayList<byte[]>();
    frames.add(frame);
    while (socket.hasReceiveMore()) {
      frames.add(socket.recv());
    }
    try {
      return format.message(frames);
    } catch (MalformedMessage e) {
      throw new AssertionError(e);
    }
  }

  /** Sends bytes to be echoed; gives what comes back, or null. */
  String heartbeat(String text) {
    var socket = sockets.get(Lane.HEARTBEAT);
    socket.setReceiveTimeOut(PATIENCE_MILLIS);
    socket.send(text);
    return socket.recvStr();
  }

  /** The reply to a message; others are kept for later. */
  Message reply(Lane lane, String id) {
    return first(lane, replies, message -> isFor(message, id));
  }

  /** The next output that is of a kind; those before it are passed over, and kept for later. */
  Message output(Predicate<Message> wanted) {
    return first(Lane.IOPUB, outputs, wanted);
  }

  /** All outputs of a request, up to the one that says the kernel is idle. */
  List<Message> outputs(String id) {
    output(message -> isFor(message, id) && isIdle(message));
    var all = outputs.stream().filter(message -> isFor(message, id)).toList();
    outputs.removeAll(all);
    return all;
  }

  private Message first(Lane lane, List<Message> kept, Predicate<Message> wanted) {
    for (var message : kept) {
      if (wanted.test(message)) {
        return message;
      }
    }
    while (true) {
      var message = next(lane, PATIENCE_MILLIS);
      if (message == null) {
        throw new AssertionError(
            "nothing more comes; so far " + kept.stream().map(Message::type).toList());
      }
      kept.add(message);
      if (wanted.test(message)) {
        return message;
      }
    }
  }

  /** Takes the outputs that arrive until none comes for a while. */
  void drain(int milliseconds) {
    for (var more = next(Lane.IOPUB, milliseconds);
        more != null;
        more = next(Lane.IOPUB, milliseconds)) {
      outputs.add(more);
    }
  }

  /** Forgets what has arrived or arrives just now. */
  void forget() {
    drain(50);
    discard();
  }

  /** Forgets what has arrived. */
  void discard() {
    outputs.clear();
    replies.clear();
  }

  /** What came of a cell. */
  record Exchange(JsonObject reply, List<Message> outputs) {

    String status() {
      return Json.text(reply, "status", "");
    }

    /** The contents of the outputs of one type. */
    List<JsonObject> of(String type) {
      return outputs.stream()
          .filter(output -> output.type().equals(type))
          .map(Message::content)
          .toList();
    }

    /** What was printed to a stream. */
    String printed(String stream) {
      var text = new StringBuilder();
      of("stream").stream()
          .filter(content -> Json.text(content, "name", "").equals(stream))
          .forEach(content -> text.append(Json.text(content, "text", "")));
      return text.toString();
    }

    /** The plain text of the result. */
    String result() {
      return of("execute_result").stream()
          .map(content -> Json.text(Json.child(content, "data"), "text/plain", ""))
          .findFirst()
          .orElse("no result");
    }

    List<String> types() {
      return outputs.stream().map(Message::type).toList();
    }
  }

  /** Runs a cell and waits for its end. */
  Exchange execute(String code) {
    return finish(start(code));
  }

  /** Sends a cell. */
  String start(String code) {
    return send(Lane.SHELL, "execute_request", code(code));
  }

  /** Waits for the end of a cell. */
  Exchange finish(String id) {
    var published = outputs(id);
    return new Exchange(reply(Lane.SHELL, id).content(), published);
  }

  /** Sends a request on the shell and gives the content of the reply. */
  JsonObject ask(String type, JsonObject content) {
    return askOn(Lane.SHELL, type, content);
  }

  JsonObject askOn(Lane lane, String type, JsonObject content) {
    return reply(lane, send(lane, type, content)).content();
  }

  static JsonObject code(String code) {
    var content = new JsonObject();
    content.addProperty("code", code);
    return content;
  }

  static boolean isFor(Message message, String id) {
    return Json.text(message.parent(), "msg_id", "").equals(id);
  }

  static boolean isIdle(Message message) {
    return message.type().equals("status")
        && Json.text(message.content(), "execution_state", "").equals("idle");
  }

  @Override
  public void close() {
    context.close();
  }
}
