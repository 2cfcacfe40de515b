package agro.notebook.install;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * The file that tells a kernel on which ports of this machine to listen and with which key messages
 * are signed (chapter "Making kernels for Jupyter", section "Connection files").
 *
 * @param shell port of the requests
 * @param control port of the requests that do not wait
 * @param iopub port of what the cells show
 * @param stdin port of the questions to the user
 * @param heartbeat port of the sign of life
 * @param key the key, as text
 */
record ConnectionFile(int shell, int control, int iopub, int stdin, int heartbeat, String key) {

  static final String LOOPBACK = "127.0.0.1";

  /**
   * Ports that are free at this moment.
   *
   * @throws IOException when none can be had on the loopback interface
   */
  static ConnectionFile onFreePorts() throws IOException {
    List<ServerSocket> held = new ArrayList<>();
    try {
      for (var i = 0; i < 5; i++) {
        var socket = new ServerSocket();
        held.add(socket);
        socket.bind(new InetSocketAddress(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), 0));
      }
      var ports = held.stream().map(ServerSocket::getLocalPort).toList();
      return new ConnectionFile(
          ports.get(0),
          ports.get(1),
          ports.get(2),
          ports.get(3),
          ports.get(4),
          UUID.randomUUID().toString());
    } finally {
      for (var socket : held) {
        socket.close();
      }
    }
  }

  /** Writes the file into a folder that nobody else may read. */
  Path writeInto(Path folder) throws IOException {
    var content = new JsonObject();
    content.addProperty("transport", "tcp");
    content.addProperty("ip", LOOPBACK);
    content.addProperty("shell_port", shell);
    content.addProperty("control_port", control);
    content.addProperty("iopub_port", iopub);
    content.addProperty("stdin_port", stdin);
    content.addProperty("hb_port", heartbeat);
    content.addProperty("key", key);
    content.addProperty("signature_scheme", "hmac-sha256");
    content.addProperty("kernel_name", "");
    return Files.writeString(
        folder.resolve("connection.json"), content.toString(), StandardCharsets.UTF_8);
  }

  byte[] keyBytes() {
    return key.getBytes(StandardCharsets.UTF_8);
  }

  static String address(int port) {
    return "tcp://" + LOOPBACK + ":" + port;
  }
}
