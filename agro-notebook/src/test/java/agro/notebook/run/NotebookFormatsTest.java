package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.harrel.jsonschema.ValidatorFactory;
import dev.harrel.jsonschema.providers.GsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Notebook files as other programs write them, against the official schema of nbformat 4.5. */
class NotebookFormatsTest {

  private static final String OLD =
      """
      {"metadata": {"kernelspec": {"name": "j"}, "mine": {"a": [1, null, 1.50]}, "title": "T"},
       "nbformat": 4, "nbformat_minor": 0, "made_by": "x",
       "cells": [
        {"cell_type": "raw", "metadata": {"format": "text/x-rst"}, "source": ["a\\r\\n", "b"]},
        {"cell_type": "markdown", "source": "# T\\r\\n\\r\\n![dot](attachment:d%20t.png)",
         "attachments": {"d t.png": {"image/png": ["AQ", "I="]}}, "metadata": {"slide": "x"}},
        {"cell_type": "code", "metadata": {"collapsed": true, "tags": ["t"]}, "prompt_number": 3,
         "outputs": [{"output_type": "stream", "name": "stdout", "text": "old"}],
         "execution_count": 9, "source": ["int a = 1;\\r\\n", "int b = 2;\\r", "a + b"]},
        {"cell_type": "code", "metadata": null, "source": []}
       ]}
      """;

  @TempDir private Path folder;

  private static boolean isValid(String json) throws IOException {
    try (var file = NotebookFormatsTest.class.getResourceAsStream("nbformat.v4.5.schema.json")) {
      return new ValidatorFactory()
          .withJsonNodeFactory(new GsonNode.Factory())
          .validate(new String(file.readAllBytes(), StandardCharsets.UTF_8), json)
          .isValid();
    }
  }

  private static JsonObject cell(String notebook, int at) {
    return JsonParser.parseString(notebook)
        .getAsJsonObject()
        .getAsJsonArray("cells")
        .get(at)
        .getAsJsonObject();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5})
  void everyMinorVersionIsReadAndWrittenAsTheNewest(int minor) throws IOException {
    var json = OLD.replace("\"nbformat_minor\": 0", "\"nbformat_minor\": " + minor);
    var run = NotebookRunner.standard().run(NotebookDocument.parse("old.ipynb", json));
    var executed = run.toNotebook();
    assertThat(isValid(executed)).isTrue();
    assertThat(executed)
        .contains("\"nbformat_minor\": 5")
        .contains("1.50")
        .doesNotContain("\"old\"")
        .doesNotContain("made_by");
    assertThat(cell(executed, 0).get("source")).hasToString("[\"a\\r\\n\",\"b\"]");
    assertThat(cell(executed, 0).getAsJsonObject("metadata"))
        .hasToString("{\"format\":\"text/x-rst\"}");
    assertThat(cell(executed, 1).has("attachments")).isTrue();
    assertThat(cell(executed, 1).getAsJsonObject("metadata")).hasToString("{\"slide\":\"x\"}");
    assertThat(cell(executed, 2).getAsJsonObject("metadata").keySet())
        .contains("collapsed", "tags");
    assertThat(run.outcomes().get(0).plainText()).isEqualTo("3");
  }

  @Test
  void attachmentsAndPicturesBesideTheNotebookAreInThePage() throws IOException {
    Files.write(folder.resolve("my dot.gif"), new byte[] {1, 2});
    Files.writeString(folder.resolve("d.svg"), "<svg/>", StandardCharsets.UTF_8);
    var more =
        SampleNotebook.empty()
            .prose("![gif](my%20dot.gif) ![svg](d.svg) ![](none.png) <img src='d.svg' width=9>")
            .prose("![far](http://a.example/x.png)");
    var file = folder.resolve("n.ipynb");
    Files.writeString(file, more.json(), StandardCharsets.UTF_8);
    assertThat(NotebookRunner.standard().run(file).toPage(CodeView.SHOWN))
        .contains("<img src=\"data:image/gif;base64,AQI=\" alt=\"gif\"")
        .contains("<img src=\"data:image/svg+xml;base64,PHN2Zy8+\" alt=\"svg\"")
        .contains("alt=\"A picture without a text\"")
        .contains("[picture: none.png; it was not found beside the notebook]")
        .contains("[picture: far; it was not found")
        .doesNotContain("src=\"http");
    assertThat(
            NotebookRunner.standard()
                .run(NotebookDocument.parse("old.ipynb", OLD))
                .toPage(CodeView.FOLDED))
        .contains("<img src=\"data:image/png;base64,AQI=\" alt=\"dot\"");
  }

  @Test
  void marksOfTheByteOrderAreNoText() throws IOException {
    var json = SampleNotebook.empty().prose("# 30 °C").json();
    for (var charset : new String[] {"UTF-8", "UTF-16LE", "UTF-16BE"}) {
      var file = folder.resolve(charset + ".ipynb");
      Files.write(file, ("\uFEFF" + json).getBytes(java.nio.charset.Charset.forName(charset)));
      assertThat(NotebookDocument.read(file).title()).isEqualTo("30 °C");
    }
  }

  @Test
  void htmlInProseIsFollowedWhereItIsHarmless() {
    var page =
        NotebookRunner.standard()
            .run(
                SampleNotebook.empty()
                    .prose(
                        "H<sub>2</sub>O <em>open",
                        "",
                        "<div class=\"note\">",
                        "",
                        "**x**",
                        "",
                        "</div>")
                    .prose("<iframe src=\"x\"></iframe>", "", "a <blink>b</blink>")
                    .document())
            .toPage(CodeView.FOLDED);
    assertThat(page)
        .contains("H<sub>2</sub>O <em>open</em></p>")
        .contains("<div class=\"note\">\n<p><strong>x</strong></p>\n</div>")
        .contains("&lt;iframe src=")
        .contains("a &lt;blink&gt;b&lt;/blink&gt;")
        .doesNotContain("<iframe");
  }

  @Test
  void streamsAreJoinedAndSettled() {
    var executed =
        NotebookRunner.standard()
            .run(
                SampleNotebook.empty()
                    .code(
                        "System.out.print(\"1 %\\r\");",
                        "System.out.print(\"2 %\\r\");",
                        "System.out.println(\"100 %\");",
                        "System.err.println(\"x\");")
                    .document())
            .toNotebook();
    assertThat(cell(executed, 0).getAsJsonArray("outputs")).hasSize(2);
    assertThat(cell(executed, 0).getAsJsonArray("outputs").get(0).getAsJsonObject().get("text"))
        .hasToString("[\"100 %\\n\"]");
  }

  @Test
  @Tag("slow")
  void aThousandCellsAreNoTrouble() throws IOException {
    var notebook = SampleNotebook.empty();
    for (var i = 0; i < 1_000; i++) {
      notebook.prose("## Step " + i).code("// nothing", "");
    }
    var run = NotebookRunner.standard().run(notebook.document());
    assertThat(isValid(run.toNotebook())).isTrue();
    assertThat(run.toPage(CodeView.SHOWN)).contains("Java, cell 1000").contains("#step-999");
  }
}
