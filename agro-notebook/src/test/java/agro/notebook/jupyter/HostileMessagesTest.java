package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.jupyter.KernelClient.Lane;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Whatever arrives: the kernel lives on and runs nothing that is not signed. */
@Timeout(300)
class HostileMessagesTest {

  private static final String CODE = "System.setProperty(\"agro.hostile\", \"ran\");";

  private KernelInProcess kernel;
  private KernelClient client;

  @BeforeEach
  void open() {
    System.clearProperty("agro.hostile");
    kernel = new KernelInProcess();
    client = kernel.connect();
  }

  @AfterEach
  void close() {
    client.close();
    kernel.close();
  }

  private void isAlive() {
    assertThat(client.execute("6 * 7").result()).isEqualTo("42");
    var info = client.askOn(Lane.CONTROL, "kernel_info_request", new JsonObject());
    assertThat(Json.text(info, "status", "")).isEqualTo("ok");
    assertThat(client.heartbeat("ping")).isEqualTo("ping");
    assertThat(System.getProperty("agro.hostile")).isNull();
  }

  private void attack(int messages, long seed) {
    try (var hostile = new HostileMessages(client, CODE, seed)) {
      for (var sent = 0; sent < messages; sent++) {
        hostile.send();
      }
      isAlive();
    }
  }

  @Test
  void survivesSomeHostileMessages() {
    attack(300, 7);
    assertThat(kernel.complaints()).contains("not signed").hasLineCount(lines());
  }

  /** Complaints do not grow with what is complained about. */
  private int lines() {
    var lines = (int) kernel.complaints().lines().count();
    assertThat(lines).isLessThan(40);
    return lines;
  }

  @Test
  @Tag("slow")
  void survivesFiveThousandHostileMessages() {
    attack(5_000, 2026);
  }

  @Test
  void survivesBytesThatAreNoMessagesAtAll() throws IOException {
    var ports = kernel.connection().ports();
    var random = new Random(11);
    for (var port :
        new int[] {
          ports.shell(), ports.control(), ports.stdin(), ports.iopub(), ports.heartbeat()
        }) {
      for (var round = 0; round < 10; round++) {
        try (var socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
          var bytes = new byte[1 + random.nextInt(300)];
          random.nextBytes(bytes);
          socket.getOutputStream().write(bytes);
        }
      }
    }
    isAlive();
  }

  @Test
  void aMessageSentTwiceRunsOnce() {
    var header = client.format().header("execute_request");
    var frames =
        client
            .format()
            .frames(client.message(header, KernelClient.code("System.out.print(\"once\");")));
    client.sendFrames(Lane.SHELL, frames);
    client.sendFrames(Lane.SHELL, frames);
    var first = client.finish(Json.text(header, "msg_id", ""));

    assertThat(first.printed("stdout")).isEqualTo("once");
    var next = client.execute("1 + 1").reply().get("execution_count").getAsInt();
    assertThat(next).isEqualTo(first.reply().get("execution_count").getAsInt() + 1);
  }
}
