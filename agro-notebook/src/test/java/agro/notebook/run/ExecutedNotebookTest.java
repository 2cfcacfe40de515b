package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.harrel.jsonschema.ValidatorFactory;
import dev.harrel.jsonschema.providers.GsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Executed notebooks against the official schema of nbformat 4.5, which lies beside this test. */
class ExecutedNotebookTest {

  private static String schema;
  private static String executed;

  @BeforeAll
  static void run() throws IOException {
    try (var file = ExecutedNotebookTest.class.getResourceAsStream("nbformat.v4.5.schema.json")) {
      schema = new String(file.readAllBytes(), StandardCharsets.UTF_8);
    }
    executed =
        NotebookRunner.standard()
            .withParameter("n", "2")
            .run(
                SampleNotebook.empty()
                    .prose("# Everything", "that a cell can do: °C")
                    .tagged("parameters", "int n = 1;")
                    .code("System.out.println(\"a\\nb\");", "System.err.println(\"c\");")
                    .code("display(List.of(1, 2));", "new int[] {n, 2}")
                    .code("import java.awt.image.BufferedImage;", "new BufferedImage(3, 2, 1)")
                    .code(
                        "import agro.notebook.display.MimeBundle;",
                        "MimeBundle.of(MimeBundle.JSON, \"{\\\"a\\\": [1, 2]}\")")
                    .tagged("raises-exception", "Object o = null;", "o.toString()")
                    .code("")
                    .document())
            .toNotebook();
  }

  @Test
  void itKeepsTheSchema() {
    assertThat(isValid(executed)).isTrue();
  }

  @Test
  void theSchemaRefusesWhatIsWrong() {
    assertThat(isValid(executed.replace("\"execution_count\": 1", "\"execution_count\": \"1\"")))
        .isFalse();
    assertThat(isValid(executed.replace("\"outputs\"", "\"output\""))).isFalse();
  }

  private static boolean isValid(String json) {
    return new ValidatorFactory()
        .withJsonNodeFactory(new GsonNode.Factory())
        .validate(schema, json)
        .isValid();
  }

  @Test
  void outputsAreWhatTheCellsGave() {
    var streams = outputs(3);
    assertThat(streams).hasSize(2);
    assertThat(streams.get(0).getAsJsonObject().get("text")).hasToString("[\"a\\n\",\"b\\n\"]");
    assertThat(streams.get(1).getAsJsonObject().get("name").getAsString()).isEqualTo("stderr");
    var shown = outputs(4);
    assertThat(shown.get(0).getAsJsonObject().get("output_type").getAsString())
        .isEqualTo("display_data");
    assertThat(data(shown, 1).get("text/plain")).hasToString("[\"[2, 2]\"]");
    assertThat(data(outputs(5), 0).get("image/png").getAsString()).startsWith("iVBOR");
    assertThat(data(outputs(6), 0).get("application/json")).hasToString("{\"a\":[1,2]}");
    var error = outputs(7).get(0).getAsJsonObject();
    assertThat(error.get("ename").getAsString()).isEqualTo("java.lang.NullPointerException");
    assertThat(error.get("traceback").toString()).contains("cell 7, line 2").doesNotContain("REPL");
  }

  private static JsonArray outputs(int cell) {
    var cells = JsonParser.parseString(executed).getAsJsonObject().getAsJsonArray("cells");
    return cells.get(cell).getAsJsonObject().getAsJsonArray("outputs");
  }

  private static JsonObject data(JsonArray outputs, int at) {
    return outputs.get(at).getAsJsonObject().getAsJsonObject("data");
  }

  @Test
  void theFileMakesCleanDifferences() {
    assertThat(executed)
        .startsWith("{\n \"cells\": [\n  {\n   \"cell_type\": \"markdown\",\n   \"id\": \"c0\"")
        .contains("that a cell can do: °C")
        .contains("\n \"nbformat_minor\": 5\n}\n")
        .endsWith("}\n");
  }
}
