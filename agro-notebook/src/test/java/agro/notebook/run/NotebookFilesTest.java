package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.harrel.jsonschema.ValidatorFactory;
import dev.harrel.jsonschema.providers.GsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every notebook as it is committed: valid, without outputs, in short cells between prose. */
class NotebookFilesTest {

  private static final int LINES_OF_A_CELL = 10;

  static Stream<Path> notebooks() throws IOException {
    try (var files = Files.list(Path.of("..", "notebooks"))) {
      var notebooks = files.filter(file -> file.toString().endsWith(".ipynb")).sorted().toList();
      assertThat(notebooks).isNotEmpty();
      return notebooks.stream();
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<JsonObject> cells(Path notebook) {
    var cells = JsonParser.parseString(text(notebook)).getAsJsonObject().getAsJsonArray("cells");
    return StreamSupport.stream(cells.spliterator(), false)
        .map(JsonElement::getAsJsonObject)
        .toList();
  }

  private static boolean isCode(JsonObject cell) {
    return cell.get("cell_type").getAsString().equals("code");
  }

  @ParameterizedTest
  @MethodSource("notebooks")
  void itKeepsTheSchema(Path notebook) throws IOException {
    try (var file = NotebookFilesTest.class.getResourceAsStream("nbformat.v4.5.schema.json")) {
      var schema = new String(file.readAllBytes(), StandardCharsets.UTF_8);
      var result =
          new ValidatorFactory()
              .withJsonNodeFactory(new GsonNode.Factory())
              .validate(schema, text(notebook));
      assertThat(result.getErrors()).isEmpty();
      assertThat(result.isValid()).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("notebooks")
  void itsNameTellsItsPlace(Path notebook) {
    assertThat(notebook.getFileName().toString()).matches("\\d\\d-[a-z-]+\\.ipynb");
    var top = JsonParser.parseString(text(notebook)).getAsJsonObject();
    assertThat(top.get("nbformat").getAsInt()).isEqualTo(4);
    assertThat(top.get("nbformat_minor").getAsInt()).isEqualTo(5);
  }

  @ParameterizedTest
  @MethodSource("notebooks")
  void itHoldsNoOutputs(Path notebook) {
    assertThat(cells(notebook).stream().filter(NotebookFilesTest::isCode))
        .isNotEmpty()
        .allSatisfy(
            cell -> {
              assertThat(cell.getAsJsonArray("outputs")).isEmpty();
              assertThat(cell.get("execution_count").isJsonNull()).isTrue();
            });
  }

  @ParameterizedTest
  @MethodSource("notebooks")
  void itsCellsAreShortAndBeginWithProse(Path notebook) {
    var cells = cells(notebook);
    assertThat(isCode(cells.get(0))).isFalse();
    assertThat(cells.stream().filter(NotebookFilesTest::isCode))
        .allSatisfy(
            cell ->
                assertThat(NotebookJson.text(cell.get("source")).lines().count())
                    .isBetween(1L, (long) LINES_OF_A_CELL));
    assertThat(cells.stream().map(cell -> cell.get("id").getAsString())).doesNotHaveDuplicates();
  }
}
