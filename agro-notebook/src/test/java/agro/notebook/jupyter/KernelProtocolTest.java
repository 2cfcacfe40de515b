package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.jupyter.KernelClient.Lane;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Requests and replies as "Messaging in Jupyter", version 5.4, describes them. */
class KernelProtocolTest {

  private static KernelInProcess kernel;
  private static KernelClient client;

  @BeforeAll
  static void open() {
    kernel = new KernelInProcess();
    client = kernel.connect();
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

  @Test
  void kernelInfoSaysWhoAnswersOnShellAndControl() {
    for (var lane : new Lane[] {Lane.SHELL, Lane.CONTROL}) {
      var info = client.askOn(lane, "kernel_info_request", new JsonObject());
      assertThat(Json.text(info, "status", "")).isEqualTo("ok");
      assertThat(Json.text(info, "protocol_version", "")).isEqualTo("5.4");
      assertThat(info.keySet())
          .contains(
              "implementation",
              "implementation_version",
              "banner",
              "help_links",
              "debugger",
              "supported_features");
      var language = Json.child(info, "language_info");
      assertThat(Json.text(language, "name", "")).isEqualTo("java");
      assertThat(Json.text(language, "version", "")).isEqualTo(System.getProperty("java.version"));
      assertThat(Json.text(language, "mimetype", "")).isEqualTo("text/x-java");
      assertThat(Json.text(language, "file_extension", "")).startsWith(".");
    }
  }

  @Test
  void statusFramesEverythingThatACellPublishes() {
    var ran = client.execute("System.out.print(\"out\"); System.err.print(\"err\"); 40 + 2");

    assertThat(ran.status()).isEqualTo("ok");
    assertThat(ran.types())
        .containsExactly("status", "execute_input", "stream", "stream", "execute_result", "status");
    assertThat(ran.of("status"))
        .extracting(status -> Json.text(status, "execution_state", ""))
        .containsExactly("busy", "idle");
    assertThat(ran.printed("stdout")).isEqualTo("out");
    assertThat(ran.printed("stderr")).isEqualTo("err");
    assertThat(ran.result()).isEqualTo("42");
    assertThat(ran.reply().get("payload").getAsJsonArray()).isEmpty();
    assertThat(ran.reply().get("user_expressions").getAsJsonObject().size()).isZero();
  }

  @Test
  void cellsAreCountedOnceAndTheSameEverywhere() {
    var first = client.execute("1");
    var second = client.execute("2");
    var count = first.reply().get("execution_count").getAsInt();

    assertThat(second.reply().get("execution_count").getAsInt()).isEqualTo(count + 1);
    assertThat(second.of("execute_input").get(0).get("execution_count").getAsInt())
        .isEqualTo(count + 1);
    assertThat(second.of("execute_result").get(0).get("execution_count").getAsInt())
        .isEqualTo(count + 1);
  }

  @Test
  void anErrorIsToldOnceWithTheExceptionsOwnName() {
    var ran = client.execute("throw new java.io.UncheckedIOException(\"no disk\", null);");
    var told = client.execute("throw new IllegalStateException(\"as expected\");");

    assertThat(ran.status()).isEqualTo("error");
    assertThat(told.of("error")).hasSize(1);
    var error = told.of("error").get(0);
    assertThat(Json.text(error, "ename", "")).contains("IllegalStateException");
    assertThat(Json.text(error, "evalue", "")).isEqualTo("as expected");
    assertThat(error.get("traceback").getAsJsonArray()).isNotEmpty();
    assertThat(told.reply().get("traceback")).isEqualTo(error.get("traceback"));
  }

  @Test
  void aSilentCellPublishesNothingAndCountsNothing() {
    var before = client.execute("1").reply().get("execution_count").getAsInt();
    var quiet =
        KernelClient.code("int quiet = 3; System.out.print(\"unheard\"); display(1); quiet");
    quiet.addProperty("silent", true);
    var ran = client.finish(client.send(Lane.SHELL, "execute_request", quiet));

    assertThat(ran.status()).isEqualTo("ok");
    assertThat(ran.types()).containsExactly("status", "status");
    assertThat(ran.reply().get("execution_count").getAsInt()).isEqualTo(before);
    assertThat(client.execute("quiet").result()).isEqualTo("3");
  }

  @Test
  void anUncountedCellIsShown() {
    var before = client.execute("1").reply().get("execution_count").getAsInt();
    var content = KernelClient.code("5 + 5");
    content.addProperty("store_history", false);
    var ran = client.finish(client.send(Lane.SHELL, "execute_request", content));

    assertThat(ran.result()).isEqualTo("10");
    assertThat(ran.reply().get("execution_count").getAsInt()).isEqualTo(before);
  }

  @Test
  void userExpressionsAreEvaluatedOneByOne() {
    var content = KernelClient.code("int base = 21;");
    var expressions = new JsonObject();
    expressions.addProperty("twice", "base * 2");
    expressions.addProperty("wrong", "basis");
    content.add("user_expressions", expressions);
    var ran = client.finish(client.send(Lane.SHELL, "execute_request", content));

    var values = Json.child(ran.reply(), "user_expressions");
    var twice = Json.child(values, "twice");
    assertThat(Json.text(twice, "status", "")).isEqualTo("ok");
    assertThat(Json.text(Json.child(twice, "data"), "text/plain", "")).isEqualTo("42");
    assertThat(twice.get("metadata").isJsonObject()).isTrue();
    assertThat(Json.text(Json.child(values, "wrong"), "status", "")).isEqualTo("error");
    assertThat(ran.of("error")).isEmpty();
  }

  @Test
  void cellsBehindAFailedOneAreAborted() {
    var failing = client.start("Thread.sleep(100); throw new IllegalStateException();");
    var behind = client.start("int ranAnyway = 1;");
    var question = client.send(Lane.SHELL, "is_complete_request", KernelClient.code("1"));

    assertThat(client.finish(failing).status()).isEqualTo("error");
    var aborted = client.finish(behind);
    assertThat(aborted.status()).isEqualTo("aborted");
    assertThat(aborted.types()).containsExactly("status", "status");
    assertThat(Json.text(client.reply(Lane.SHELL, question).content(), "status", ""))
        .isEqualTo("complete");
    assertThat(client.execute("ranAnyway").status()).isEqualTo("error");
  }

  @Test
  void cellsBehindAFailedOneGoOnWhenItSaysSo() {
    var content = KernelClient.code("throw new IllegalStateException();");
    content.addProperty("stop_on_error", false);
    var failing = client.send(Lane.SHELL, "execute_request", content);
    var behind = client.start("6 * 7");

    assertThat(client.finish(failing).status()).isEqualTo("error");
    assertThat(client.finish(behind).result()).isEqualTo("42");
  }

  @Test
  void somethingShownCanBeReplacedAndTakenAway() {
    var shown =
        client.execute(
            "String id = display(\"first\"); updateDisplay(id, \"second\"); clearOutput(true);");

    assertThat(shown.types())
        .containsExactly(
            "status",
            "execute_input",
            "display_data",
            "update_display_data",
            "clear_output",
            "status");
    var display = shown.of("display_data").get(0);
    var update = shown.of("update_display_data").get(0);
    assertThat(update.get("transient")).isEqualTo(display.get("transient"));
    assertThat(Json.text(Json.child(update, "data"), "text/plain", "")).isEqualTo("second");
    assertThat(shown.of("clear_output").get(0).get("wait")).isEqualTo(new JsonPrimitive(true));
  }

  @Test
  void aThreadThatGoesOnPrintsToTheLastCell() {
    client.execute("var gate = new CountDownLatch(1);");
    client.execute(
        "new Thread(() -> { try { gate.await(); System.out.println(\"late\"); }"
            + " catch (InterruptedException e) { } }).start();");
    var last = client.start("gate.countDown();");

    var late = client.output(message -> message.type().equals("stream"));
    assertThat(Json.text(late.content(), "text", "")).isEqualTo("late\n");
    assertThat(KernelClient.isFor(late, last)).isTrue();
    client.finish(last);
  }

  @Test
  void whatNobodyKnowsIsAnsweredWithAnError() {
    var debug = client.askOn(Lane.CONTROL, "debug_request", new JsonObject());
    var other = client.ask("weather_request", new JsonObject());
    var empty = client.ask("execute_request", new JsonObject());

    assertThat(Json.text(debug, "status", "")).isEqualTo("error");
    assertThat(Json.text(other, "status", "")).isEqualTo("error");
    assertThat(Json.text(empty, "status", "")).isEqualTo("error");
    assertThat(Json.text(empty, "evalue", "")).contains("code");
    assertThat(client.execute("1 + 1").result()).isEqualTo("2");
  }

  @Test
  void theHeartbeatEchoesWhileACellRuns() {
    var running = client.start("Thread.sleep(300);");
    assertThat(client.heartbeat("ping")).isEqualTo("ping");
    assertThat(client.heartbeat("")).isEmpty();
    client.finish(running);
  }

  @Test
  void printedLinesAreAllThere() {
    var ran = client.execute("for (int i = 0; i < 20_000; i++) System.out.println(\"line \" + i);");

    assertThat(ran.printed("stdout").lines()).hasSize(20_000).endsWith("line 19999");
    assertThat(ran.of("stream").size()).isLessThan(1_000);
  }
}
