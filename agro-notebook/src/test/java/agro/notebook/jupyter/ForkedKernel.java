package agro.notebook.jupyter;

import agro.notebook.jupyter.ConnectionFile.Ports;
import agro.notebook.jupyter.ConnectionFile.Signature;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A kernel as a front end starts it: the jar, a connection file, a process of its own. */
final class ForkedKernel implements AutoCloseable {

  private static final Path JAR = Path.of("target", "agro-notebook.jar");
  private static final int PORTS = 5;

  private final Path folder;
  private final ConnectionFile connection;
  private final Process process;

  /**
   * Starts a kernel.
   *
   * @param folder where its files are
   * @param options of the virtual machine
   */
  ForkedKernel(Path folder, String... options) throws IOException {
    this(folder, ProcessHandle.current().pid(), options);
  }

  private ForkedKernel(Path folder, long parent, String... options) throws IOException {
    this.folder = folder;
    connection = new ConnectionFile("127.0.0.1", freePorts(), new Signature("hmac-sha256", "it"));
    var file = folder.resolve("connection.json");
    Files.writeString(file, json());
    process = start(folder, file.toString(), parent, options);
  }

  /** Starts a kernel that takes a process for its parent. */
  static ForkedKernel childOf(Path folder, long parent) throws IOException {
    return new ForkedKernel(folder, parent);
  }

  /** Starts the process of a kernel. */
  static Process start(Path folder, String connectionFile, long parent, String... options)
      throws IOException {
    var command = new ArrayList<String>();
    if (System.getProperty("os.name").equals("Linux")) {
      // What a shell starts in its background ignores this signal, and so would the kernel.
      command.addAll(List.of("env", "--default-signal=INT"));
    }
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:+UseSerialGC", "-Dfile.encoding=US-ASCII"));
    command.addAll(List.of(options));
    command.addAll(List.of("-jar", JAR.toAbsolutePath().toString(), "kernel", connectionFile));
    var builder =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(folder.resolve("out.txt").toFile())
            .redirectError(folder.resolve("err.txt").toFile());
    builder.environment().put("XDG_DATA_HOME", folder.resolve("data").toString());
    builder.environment().put("JPY_PARENT_PID", Long.toString(parent));
    return builder.start();
  }

  private static Ports freePorts() throws IOException {
    var sockets = new ArrayList<ServerSocket>();
    try {
      for (var at = 0; at < PORTS; at++) {
        sockets.add(new ServerSocket(0, 1, InetAddress.getLoopbackAddress()));
      }
      var free = sockets.stream().map(ServerSocket::getLocalPort).toList();
      return new Ports(free.get(0), free.get(1), free.get(2), free.get(3), free.get(4));
    } finally {
      for (var socket : sockets) {
        socket.close();
      }
    }
  }

  private String json() {
    var ports = connection.ports();
    var json = new JsonObject();
    json.addProperty("transport", "tcp");
    json.addProperty("ip", "127.0.0.1");
    json.addProperty("shell_port", ports.shell());
    json.addProperty("control_port", ports.control());
    json.addProperty("stdin_port", ports.stdin());
    json.addProperty("iopub_port", ports.iopub());
    json.addProperty("hb_port", ports.heartbeat());
    json.addProperty("signature_scheme", connection.signature().scheme());
    json.addProperty("key", connection.signature().key());
    return json.toString();
  }

  KernelClient connect() {
    return KernelClient.connect(connection);
  }

  Process process() {
    return process;
  }

  /** Waits for the end of the process and gives its exit status. */
  int awaitExit() throws InterruptedException {
    if (!process.waitFor(1, TimeUnit.MINUTES)) {
      throw new AssertionError("the kernel does not end");
    }
    return process.exitValue();
  }

  String out() throws IOException {
    return Files.readString(folder.resolve("out.txt"), StandardCharsets.UTF_8);
  }

  String err() throws IOException {
    return Files.readString(folder.resolve("err.txt"), StandardCharsets.UTF_8);
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
