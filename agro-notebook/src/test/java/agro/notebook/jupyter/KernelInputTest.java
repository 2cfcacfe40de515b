package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.jupyter.KernelClient.Lane;
import com.google.gson.JsonObject;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Questions to the reader: the one who sent the cell is asked, and nobody else. */
class KernelInputTest {

  private static final String READ = "System.out.print(new Scanner(System.in).nextLine() + \"!\");";

  private static KernelInProcess kernel;
  private static KernelClient client;
  private static KernelClient other;

  @BeforeAll
  static void open() {
    kernel = new KernelInProcess();
    client = kernel.connect();
    other = kernel.connect();
  }

  @BeforeEach
  void forget() {
    client.forget();
    other.forget();
  }

  @AfterAll
  static void close() {
    other.close();
    client.close();
    kernel.close();
  }

  private static void answer(KernelClient from, String value) {
    var content = new JsonObject();
    content.addProperty("value", value);
    from.send(Lane.STDIN, "input_reply", content);
  }

  @Test
  void asksWhoSentTheCell() {
    var cell = client.start(READ);
    var asked = client.next(Lane.STDIN, KernelClient.PATIENCE_MILLIS);

    assertThat(asked.type()).isEqualTo("input_request");
    assertThat(KernelClient.isFor(asked, cell)).isTrue();
    assertThat(asked.content().keySet()).contains("prompt", "password");
    assertThat(asked.content().get("password").getAsBoolean()).isFalse();
    answer(client, "pears");
    assertThat(client.finish(cell).printed("stdout")).isEqualTo("pears!");
    assertThat(other.next(Lane.STDIN, 50)).isNull();
  }

  @Test
  void takesNoAnswerOfSomebodyElse() {
    var cell = other.start(READ);
    other.next(Lane.STDIN, KernelClient.PATIENCE_MILLIS);
    answer(client, "wrong");
    answer(other, "right");

    assertThat(other.finish(cell).printed("stdout")).isEqualTo("right!");
  }

  @Test
  void whatIsPrintedComesBeforeTheQuestion() {
    var cell = client.start("System.out.print(\"How many? \"); " + READ);
    var printed = client.output(message -> message.type().equals("stream"));

    assertThat(Json.text(printed.content(), "text", "")).isEqualTo("How many? ");
    client.next(Lane.STDIN, KernelClient.PATIENCE_MILLIS);
    answer(client, "3");
    client.finish(cell);
  }

  @Test
  void whoCannotAnswerIsNotAsked() {
    var content = KernelClient.code("System.in.read()");
    content.addProperty("allow_stdin", false);
    var ran = client.finish(client.send(Lane.SHELL, "execute_request", content));

    assertThat(ran.status()).isEqualTo("error");
    assertThat(Json.text(ran.reply(), "evalue", "")).contains("nobody can answer");
    assertThat(client.next(Lane.STDIN, 50)).isNull();
  }

  @Test
  void waitingForAnAnswerEndsByInterrupt() {
    var cell = client.start("System.in.read()");
    client.next(Lane.STDIN, KernelClient.PATIENCE_MILLIS);
    client.askOn(Lane.CONTROL, "interrupt_request", new JsonObject());

    assertThat(client.finish(cell).status()).isEqualTo("error");
    answer(client, "too late");
    assertThat(client.execute("6 * 7").result()).isEqualTo("42");
  }
}
