package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.jupyter.KernelClient.Lane;
import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.zeromq.SocketType;
import org.zeromq.ZContext;

/** Front ends that listen but do not read, or go away in the middle. */
@Timeout(180)
class SlowReaderTest {

  /** More than these cells print, so that all of it is for the reader and none for a file. */
  @BeforeEach
  void allowMuchOutput() {
    System.setProperty("agro.output.limit", "100 MB");
  }

  @AfterEach
  void allowTheUsual() {
    System.clearProperty("agro.output.limit");
  }

  private static String much(int lines) {
    return "String line = \"x\".repeat(1_000_000); for (int i = 0; i < "
        + lines
        + "; i++) System.out.println(line);";
  }

  /** Listens with little room for what it does not read. */
  private static ZContext deaf(ConnectionFile connection) {
    var context = new ZContext();
    var socket = context.createSocket(SocketType.SUB);
    socket.setRcvHWM(1);
    socket.setReceiveBufferSize(4_096);
    socket.subscribe("".getBytes(StandardCharsets.US_ASCII));
    socket.connect(connection.endpoint(connection.ports().iopub()));
    return context;
  }

  @Test
  void aCellWaitsForItsReaderAndLosesNothing() {
    try (var kernel = new KernelInProcess(Optional.empty(), 1 << 20);
        var client = kernel.connect()) {
      // The client reads nothing until the cell has long filled every buffer.
      var cell = client.start(much(20));
      var info = client.askOn(Lane.CONTROL, "kernel_info_request", new JsonObject());
      assertThat(Json.text(info, "status", "")).isEqualTo("ok");
      assertThat(client.heartbeat("ping")).isEqualTo("ping");

      assertThat(client.finish(cell).printed("stdout")).hasSize(20 * 1_000_001);
    }
  }

  @Test
  void aReaderThatGoesAwayHoldsNothingUp() {
    try (var kernel = new KernelInProcess(Optional.empty(), 1 << 20);
        var client = kernel.connect()) {
      var deaf = deaf(kernel.connection());
      client.execute("1");
      var cell = client.start(much(20));
      client.output(message -> message.type().equals("stream"));
      deaf.close();

      assertThat(client.finish(cell).printed("stdout")).hasSize(20 * 1_000_001);
    }
  }

  @Test
  @Tag("slow")
  void aReaderThatDoesNotReadDoesNotStarveTheOthers() {
    try (var kernel = new KernelInProcess(Optional.empty(), 1 << 20);
        var client = kernel.connect();
        var deaf = deaf(kernel.connection())) {
      client.execute("1");
      assertThat(deaf.isClosed()).isFalse();
      var cell = client.start(much(20));

      assertThat(client.finish(cell).printed("stdout")).hasSize(20 * 1_000_001);
      assertThat(client.execute("6 * 7").result()).isEqualTo("42");
    }
  }
}
