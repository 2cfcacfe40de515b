package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Completion, inspection and completeness; the protocol counts characters, Java counts halves. */
class CodeQuestionsTest {

  private static final String MOTH = "\uD83E\uDD8B";

  private static KernelInProcess kernel;
  private static KernelClient client;

  @BeforeAll
  static void open() {
    kernel = new KernelInProcess();
    client = kernel.connect();
    client.execute("String word = \"pear\";");
  }

  @AfterAll
  static void close() {
    client.close();
    kernel.close();
  }

  private static JsonObject at(String code, int cursor) {
    var content = KernelClient.code(code);
    content.addProperty("cursor_pos", cursor);
    return content;
  }

  @Test
  void completesAWord() {
    var reply = client.ask("complete_request", at("word.isBl", 9));

    assertThat(Json.text(reply, "status", "")).isEqualTo("ok");
    assertThat(reply.get("matches").toString()).contains("isBlank");
    assertThat(reply.get("cursor_start").getAsInt()).isEqualTo(5);
    assertThat(reply.get("cursor_end").getAsInt()).isEqualTo(9);
  }

  @Test
  void countsACharacterOfTwoHalvesOnce() {
    var code = "String s = \"" + MOTH + MOTH + "\" + word.isBl";
    var characters = code.codePointCount(0, code.length());
    var reply = client.ask("complete_request", at(code, characters));

    assertThat(reply.get("matches").toString()).contains("isBlank");
    assertThat(reply.get("cursor_start").getAsInt()).isEqualTo(characters - 4);
    assertThat(reply.get("cursor_end").getAsInt()).isEqualTo(characters);
  }

  @Test
  void tellsTheTypesOfMatches() {
    var reply = client.ask("complete_request", at("word.isBl", 9));
    var types = Json.child(reply, "metadata").getAsJsonArray("_jupyter_types_experimental");

    assertThat(types).hasSameSizeAs(reply.get("matches").getAsJsonArray()).isNotEmpty();
    var first = types.get(0).getAsJsonObject();
    assertThat(first.keySet())
        .containsExactlyInAnyOrder("text", "type", "start", "end", "signature");
    assertThat(first.get("start").getAsInt()).isEqualTo(5);
  }

  @Test
  void aCursorOutsideTheCodeIsTakenForItsEnd() {
    assertThat(Json.text(client.ask("complete_request", at("word", 99)), "status", ""))
        .isEqualTo("ok");
    assertThat(Json.text(client.ask("complete_request", at("word", -3)), "status", ""))
        .isEqualTo("ok");
    assertThat(Json.text(client.ask("inspect_request", at("", 5)), "status", "")).isEqualTo("ok");
  }

  @Test
  void inspectsACallBehindSuchACharacter() {
    var code = "\"" + MOTH + "\" + Math.max(";
    var cursor = code.codePointCount(0, code.length());
    var reply = client.ask("inspect_request", at(code, cursor));

    assertThat(reply.get("found").getAsBoolean()).isTrue();
    assertThat(Json.text(Json.child(reply, "data"), "text/plain", "")).contains("max");
  }

  @Test
  void saysWhenThereIsNothingToSay() {
    var reply = client.ask("inspect_request", at("   ", 1));

    assertThat(reply.get("found").getAsBoolean()).isFalse();
    assertThat(reply.get("data").getAsJsonObject().size()).isZero();
  }

  @Test
  void judgesWhetherCodeIsWhole() {
    assertThat(status("1 + 1")).isEqualTo("complete");
    assertThat(status("if (true) {")).isEqualTo("incomplete");
    var open = client.ask("is_complete_request", KernelClient.code("if (true) {"));
    assertThat(open.has("indent")).isTrue();
  }

  private static String status(String code) {
    return Json.text(client.ask("is_complete_request", KernelClient.code(code)), "status", "");
  }
}
