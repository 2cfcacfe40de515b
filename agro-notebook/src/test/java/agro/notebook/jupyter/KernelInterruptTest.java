package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.jupyter.KernelClient.Lane;
import com.google.gson.JsonObject;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class KernelInterruptTest {

  private KernelInProcess kernel;
  private KernelClient client;

  @BeforeEach
  void open() {
    kernel = new KernelInProcess();
    client = kernel.connect();
  }

  @AfterEach
  void close() {
    client.close();
    kernel.close();
  }

  private void awaitStart(String cell) {
    client.output(
        message -> message.type().equals("execute_input") && KernelClient.isFor(message, cell));
  }

  @Test
  void endsASleepAndWhatWaitsBehindIt() {
    var sleeping = client.start("Thread.sleep(600_000);");
    var behind = client.start("1 + 1");
    awaitStart(sleeping);
    var reply = client.askOn(Lane.CONTROL, "interrupt_request", new JsonObject());

    assertThat(Json.text(reply, "status", "")).isEqualTo("ok");
    assertThat(client.finish(sleeping).status()).isEqualTo("error");
    assertThat(client.finish(behind).status()).isEqualTo("aborted");
    assertThat(client.execute("6 * 7").result()).isEqualTo("42");
  }

  @Test
  void worksOnTheShellToo() {
    var sleeping = client.start("Thread.sleep(600_000);");
    awaitStart(sleeping);
    client.ask("interrupt_request", new JsonObject());

    assertThat(client.finish(sleeping).status()).isEqualTo("error");
  }

  @Test
  void reachesACellThatHasHardlyBegun() {
    for (var round = 0; round < 20; round++) {
      var sleeping = client.start("Thread.sleep(600_000);");
      awaitStart(sleeping);
      client.askOn(Lane.CONTROL, "interrupt_request", new JsonObject());
      assertThat(client.finish(sleeping).status()).isEqualTo("error");
    }
  }

  @Test
  void withoutACellItDoesNothing() {
    client.askOn(Lane.CONTROL, "interrupt_request", new JsonObject());
    assertThat(client.execute("6 * 7").result()).isEqualTo("42");
  }

  @Test
  void controlAnswersWhileACellRuns() {
    var sleeping = client.start("Thread.sleep(600_000);");
    awaitStart(sleeping);
    var info = client.askOn(Lane.CONTROL, "kernel_info_request", new JsonObject());
    var comms = client.askOn(Lane.CONTROL, "comm_info_request", new JsonObject());

    assertThat(Json.text(info, "status", "")).isEqualTo("ok");
    assertThat(Json.text(comms, "status", "")).isEqualTo("ok");
    client.askOn(Lane.CONTROL, "interrupt_request", new JsonObject());
    assertThat(client.finish(sleeping).status()).isEqualTo("error");
  }
}
