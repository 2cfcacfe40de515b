package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NotebookDocumentTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "not json|is not JSON",
        "[1, 2]|no JSON object",
        "{\"cells\": [], \"nbformat\": 3}|format version is 3",
        "{\"cells\": []}|format version is missing",
        "{\"nbformat\": 4}|no list of cells",
        "{\"nbformat\": 4, \"cells\": [{\"cell_type\": \"heading\"}]}|cell 1",
        "{\"nbformat\": 4, \"cells\": [], \"metadata\": {\"kernelspec\": {\"language\": \"R\"}}}"
            + "|language is R"
      })
  void whatIsNoJavaNotebookIsRefused(String json, String part) {
    assertThatThrownBy(() -> NotebookDocument.parse("bad.ipynb", json))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("bad.ipynb")
        .hasMessageContaining(part)
        .hasMessageContaining("Mend:");
  }

  @Test
  void aMissingFileIsRefused() {
    assertThatThrownBy(() -> NotebookDocument.read(Path.of("no-such.ipynb")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("there is no such file");
  }

  @Test
  void twoChecksOfOneNameAreRefused() {
    var notebook = SampleNotebook.empty().tagged("check:a", "1").tagged("check:a", "2");
    assertThatThrownBy(notebook::document)
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("check:a");
  }

  @Test
  void cellsWithoutANameGetOne() {
    var json =
        "{\"nbformat\": 4, \"nbformat_minor\": 2, \"metadata\": {}, \"cells\": ["
            + "{\"cell_type\": \"code\", \"source\": [\"int a;\\n\", \"a\"]},"
            + "{\"cell_type\": \"raw\", \"source\": \"\", \"id\": \"has space\"},"
            + "{\"cell_type\": \"markdown\", \"source\": \"\", \"id\": \"mine\"},"
            + "{\"cell_type\": \"markdown\", \"source\": \"\", \"id\": \"mine\"}]}";
    var cells = NotebookDocument.parse("old.ipynb", json).cells();
    assertThat(cells).extracting(NotebookCell::id).doesNotHaveDuplicates().contains("mine");
    assertThat(cells.get(0).source()).isEqualTo("int a;\na");
  }

  @Test
  void theTitleIsTheFirstHeading() {
    var notebook = SampleNotebook.empty().prose("Some words", "# The *next* `one`", "# Other");
    assertThat(notebook.document().title()).isEqualTo("The next one");
    assertThat(SampleNotebook.empty().document().title()).isEqualTo("sample");
  }
}
