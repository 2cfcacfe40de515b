package agro.notebook.jupyter;

import agro.notebook.jupyter.KernelClient.Lane;
import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** Messages that nobody who knows the key and the protocol would send, the same for one seed. */
final class HostileMessages implements AutoCloseable {

  private static final List<Lane> SIGNED = List.of(Lane.SHELL, Lane.CONTROL, Lane.STDIN);

  private final Random random;
  private final WireFormat stranger =
      new WireFormat(
          MessageSigner.of(new ConnectionFile.Signature("hmac-sha256", "another key")), "stranger");
  private final KernelClient client;
  private final String code;
  private final ZContext context = new ZContext();
  private final List<ZMQ.Socket> others = new ArrayList<>();

  /**
   * Messages.
   *
   * @param client who sends them
   * @param code what they would run if they could
   * @param seed of all choices
   */
  HostileMessages(KernelClient client, String code, long seed) {
    this.client = client;
    this.code = code;
    random = new Random(seed);
    var connection = client.connection();
    connect(SocketType.XSUB, connection.endpoint(connection.ports().iopub()));
    connect(SocketType.DEALER, connection.endpoint(connection.ports().heartbeat()));
  }

  private void connect(SocketType type, String address) {
    var socket = context.createSocket(type);
    socket.setLinger(0);
    socket.connect(address);
    others.add(socket);
  }

  /** Sends one to one of the five sockets. */
  void send() {
    var chosen = frames();
    var frames = chosen.isEmpty() ? List.of(new byte[0]) : chosen;
    var lane = random.nextInt(SIGNED.size() + others.size());
    if (lane < SIGNED.size()) {
      client.sendFrames(SIGNED.get(lane), frames);
    } else {
      KernelClient.sendFrames(others.get(lane - SIGNED.size()), frames);
    }
  }

  @Override
  public void close() {
    context.close();
  }

  private List<byte[]> frames() {
    return switch (random.nextInt(9)) {
      case 0 -> noise();
      case 1 -> stranger.frames(request("execute_request"));
      case 2 -> shortened(client.format().frames(request("execute_request")));
      case 3 -> flipped(client.format().frames(request("execute_request")));
      case 4 -> unsigned(client.format().frames(request("execute_request")));
      case 5 -> swapped(client.format().frames(request("execute_request")));
      case 6 -> client.format().frames(request("no_such_thing"));
      case 7 -> client.format().frames(request("input_reply"));
      default -> replaced(client.format().frames(request("shutdown_request")));
    };
  }

  private Message request(String type) {
    var content = new JsonObject();
    content.addProperty("code", code);
    return client.message(client.format().header(type), content);
  }

  private List<byte[]> noise() {
    var frames = new ArrayList<byte[]>();
    for (var count = random.nextInt(9); count >= 0; count--) {
      var bytes = new byte[random.nextInt(40)];
      random.nextBytes(bytes);
      frames.add(random.nextInt(4) == 0 ? "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII) : bytes);
    }
    return frames;
  }

  private List<byte[]> shortened(List<byte[]> frames) {
    return frames.subList(0, random.nextInt(frames.size()));
  }

  /** One bit is another one, in the signature or in what is signed. */
  private List<byte[]> flipped(List<byte[]> frames) {
    var at = 1 + random.nextInt(frames.size() - 1);
    var bytes = frames.get(at).clone();
    bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(7));
    return with(frames, at, bytes);
  }

  private static List<byte[]> unsigned(List<byte[]> frames) {
    return with(frames, 1, new byte[0]);
  }

  private List<byte[]> swapped(List<byte[]> frames) {
    var all = new ArrayList<>(frames);
    all.add(2, all.remove(2 + 1 + random.nextInt(3)));
    return all;
  }

  private List<byte[]> replaced(List<byte[]> frames) {
    var other = random.nextBoolean() ? "[1, 2" : "{\"restart\": true}";
    return with(frames, 5, other.getBytes(StandardCharsets.UTF_8));
  }

  private static List<byte[]> with(List<byte[]> frames, int at, byte[] bytes) {
    var all = new ArrayList<>(frames);
    all.set(at, bytes);
    return all;
  }
}
