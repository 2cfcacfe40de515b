package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.jupyter.KernelClient.Lane;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class CommsTest {

  private static KernelInProcess kernel;
  private static KernelClient client;

  @BeforeAll
  static void open() {
    kernel = new KernelInProcess();
    client = kernel.connect();
    client.execute("import agro.notebook.jupyter.*;");
  }

  @BeforeEach
  void forget() {
    client.forget();
  }

  @AfterAll
  static void close() {
    client.close();
    kernel.close();
  }

  private static JsonObject comm(String id, String target, Map<String, ?> data) {
    var content = new JsonObject();
    content.addProperty("comm_id", id);
    if (!target.isEmpty()) {
      content.addProperty("target_name", target);
    }
    content.add("data", JsonValues.object(data));
    return content;
  }

  @Test
  void theFrontEndOpensTalksAndCloses() {
    client.execute(
        "Comms.register(\"echo\", (comm, first) -> { System.out.println(\"opened \""
            + " + first.data().get(\"n\")); comm.onMessage(message -> comm.send(message.data(),"
            + " message.buffers())); comm.onClose(message -> System.out.println(\"closed\")); });");
    var opened = client.send(Lane.SHELL, "comm_open", comm("c-1", "echo", Map.of("n", 3)));
    assertThat(printed(client.outputs(opened))).isEqualTo("opened 3\n");

    var info = client.ask("comm_info_request", new JsonObject());
    assertThat(Json.text(Json.child(Json.child(info, "comms"), "c-1"), "target_name", ""))
        .isEqualTo("echo");

    var said = client.format().header("comm_msg");
    var message =
        new Message(
            List.of(),
            said,
            new JsonObject(),
            new JsonObject(),
            comm("c-1", "", Map.of("x", List.of(1, 2.5, "t"))),
            List.of(new byte[] {1, 2, 3}));
    client.send(Lane.SHELL, message);
    var answer = client.output(output -> output.type().equals("comm_msg"));
    assertThat(answer.content().get("data")).hasToString("{\"x\":[1,2.5,\"t\"]}");
    assertThat(answer.buffers()).containsExactly(new byte[] {1, 2, 3});
    assertThat(KernelClient.isFor(answer, message.id())).isTrue();

    var closed = client.send(Lane.SHELL, "comm_close", comm("c-1", "", Map.of()));
    assertThat(printed(client.outputs(closed))).isEqualTo("closed\n");
    assertThat(Json.child(client.ask("comm_info_request", new JsonObject()), "comms").size())
        .isZero();
  }

  @Test
  void aCellOpensAndCloses() {
    var ran =
        client.execute(
            "var line = Comms.open(\"slider\", Map.of(\"value\", 0.5)); line.send(Map.of(\"value\","
                + " Double.NaN)); line.close(); line.isOpen()");

    assertThat(ran.result()).isEqualTo("false");
    assertThat(ran.types()).contains("comm_open", "comm_msg", "comm_close");
    var open = ran.of("comm_open").get(0);
    assertThat(Json.text(open, "target_name", "")).isEqualTo("slider");
    assertThat(Json.child(open, "data").get("value")).isEqualTo(new JsonPrimitive(0.5));
    assertThat(Json.child(ran.of("comm_msg").get(0), "data").get("value").isJsonNull()).isTrue();
    assertThat(client.execute("line.send(Map.of())").status()).isEqualTo("error");
  }

  @Test
  void anUnknownTargetIsClosedAtOnce() {
    var id = client.send(Lane.SHELL, "comm_open", comm("c-9", "nobody", Map.of()));
    var close =
        client.outputs(id).stream()
            .filter(output -> output.type().equals("comm_close"))
            .findFirst()
            .orElseThrow();

    assertThat(Json.text(close.content(), "comm_id", "")).isEqualTo("c-9");
  }

  @Test
  void aListenerThatFailsIsTold() {
    client.execute("Comms.register(\"bad\", (comm, first) -> { throw new Error(\"oh\"); });");
    var id = client.send(Lane.SHELL, "comm_open", comm("c-2", "bad", Map.of()));

    assertThat(printed(client.outputs(id))).contains("Error: oh");
    assertThat(client.execute("6 * 7").result()).isEqualTo("42");
  }

  @Test
  void messagesForNobodyAreIgnored() {
    client.outputs(client.send(Lane.SHELL, "comm_msg", comm("nowhere", "", Map.of())));
    client.outputs(client.send(Lane.SHELL, "comm_close", comm("nowhere", "", Map.of())));
    assertThat(client.execute("6 * 7").result()).isEqualTo("42");
  }

  private static String printed(List<Message> outputs) {
    return outputs.stream()
        .filter(output -> output.type().equals("stream"))
        .map(output -> Json.text(output.content(), "text", ""))
        .reduce("", String::concat);
  }

  @Test
  void plainValuesGoThereAndBack() {
    var values =
        JsonValues.object(
            Map.of("list", Arrays.asList(1, null, true), "numbers", new double[] {1.5, 2}));

    assertThat(JsonValues.map(values))
        .containsEntry("list", Arrays.asList(1L, null, true))
        .containsEntry("numbers", List.of(1.5, 2.0));
  }
}
