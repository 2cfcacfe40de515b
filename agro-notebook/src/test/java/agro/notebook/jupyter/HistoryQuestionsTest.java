package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HistoryQuestionsTest {

  @TempDir private static Path folder;

  private static KernelInProcess kernel;
  private static KernelClient client;

  @BeforeAll
  static void open() {
    try (var earlier = new KernelInProcess(Optional.of(folder), OutputQueue.USUAL_LIMIT);
        var before = earlier.connect()) {
      before.execute("int old = 1;");
      before.execute("old + 1");
    }
    kernel = new KernelInProcess(Optional.of(folder), OutputQueue.USUAL_LIMIT);
    client = kernel.connect();
    for (var code : List.of("6 * 7", "6 * 8", "6 * 7", "\"two\\nlines\"")) {
      client.execute(code);
    }
  }

  @AfterAll
  static void close() {
    client.close();
    kernel.close();
  }

  private static JsonObject asking(String type) {
    var content = new JsonObject();
    content.addProperty("hist_access_type", type);
    content.addProperty("raw", true);
    content.addProperty("output", false);
    return content;
  }

  private static JsonArray history(JsonObject asked) {
    var reply = client.ask("history_request", asked);
    assertThat(Json.text(reply, "status", "")).isEqualTo("ok");
    return reply.getAsJsonArray("history");
  }

  private static List<String> inputs(JsonObject asked) {
    var inputs = new ArrayList<String>();
    history(asked).forEach(row -> inputs.add(row.getAsJsonArray().get(2).getAsString()));
    return inputs;
  }

  @Test
  void tailGivesTheLastOfAllSessions() {
    var asked = asking("tail");
    asked.addProperty("n", 5);
    assertThat(inputs(asked))
        .containsExactly("old + 1", "6 * 7", "6 * 8", "6 * 7", "\"two\\nlines\"");
    asked.addProperty("unique", true);
    assertThat(inputs(asked))
        .containsExactly("int old = 1;", "old + 1", "6 * 8", "6 * 7", "\"two\\nlines\"");
  }

  @Test
  void rangeGivesCellsOfOneSession() {
    var asked = asking("range");
    asked.addProperty("session", 0);
    asked.addProperty("start", 2);
    asked.addProperty("stop", 4);
    assertThat(inputs(asked)).containsExactly("6 * 8", "6 * 7");

    var before = asking("range");
    before.addProperty("session", -1);
    before.addProperty("start", 1);
    before.addProperty("stop", 2);
    assertThat(inputs(before)).containsExactly("int old = 1;");

    var row = history(before).get(0).getAsJsonArray();
    var absolute = asking("range");
    absolute.addProperty("session", row.get(0).getAsInt());
    absolute.addProperty("start", 2);
    assertThat(inputs(absolute)).containsExactly("old + 1");
  }

  @Test
  void searchFindsByPattern() {
    var asked = asking("search");
    asked.addProperty("pattern", "6 ? 7");
    assertThat(inputs(asked)).containsExactly("6 * 7", "6 * 7");
    asked.addProperty("unique", true);
    assertThat(inputs(asked)).containsExactly("6 * 7");

    var some = asking("search");
    some.addProperty("pattern", "*6*");
    some.addProperty("n", 2);
    assertThat(inputs(some)).containsExactly("6 * 8", "6 * 7");
  }

  @Test
  void outputsAreGivenWhenWanted() {
    var asked = asking("search");
    asked.addProperty("pattern", "6 ? 8");
    asked.addProperty("output", true);
    var both = history(asked).get(0).getAsJsonArray().get(2).getAsJsonArray();

    assertThat(both.get(0).getAsString()).isEqualTo("6 * 8");
    assertThat(both.get(1).getAsString()).isEqualTo("48");
  }

  @Test
  void anUnknownKindIsRefused() {
    var reply = client.ask("history_request", asking("backwards"));
    assertThat(Json.text(reply, "status", "")).isEqualTo("error");
    assertThat(Json.text(reply, "evalue", "")).contains("range, tail, search");
  }
}
