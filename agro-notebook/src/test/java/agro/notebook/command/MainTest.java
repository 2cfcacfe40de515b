package agro.notebook.command;

import static agro.notebook.command.Said.say;
import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.run.SampleNotebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MainTest {

  @TempDir private Path folder;

  private String written(SampleNotebook notebook) throws IOException {
    var file = folder.resolve("sample.ipynb");
    Files.writeString(file, notebook.json(), StandardCharsets.UTF_8);
    return file.toString();
  }

  @Test
  void aRunPrintsTheSummaryAndThePaths() throws IOException {
    var notebook =
        written(
            SampleNotebook.empty()
                .tagged("parameters", "int n = 1;")
                .tagged("summary", "\"n is \" + n + \" °C·d\""));
    var pages = folder.resolve("pages/here");
    var said = say("run", notebook, "--set", "n=5", "--out", pages.toString());
    assertThat(said.status()).isZero();
    assertThat(said.out().lines())
        .containsExactly(
            "n is 5 °C·d",
            "",
            pages.resolve("sample.ipynb").toString(),
            pages.resolve("sample.html").toString());
    assertThat(said.err()).contains("cell 1 of 3").contains("cell 3 of 3");
    assertThat(pages.resolve("sample.ipynb")).isRegularFile();
    assertThat(pages.resolve("sample.html")).isRegularFile();
    assertThat(pages).isDirectoryNotContaining("glob:**.part");
  }

  @Test
  void aFailingCellIsNamedAndNothingLooksLikeASuccess() throws IOException {
    var notebook = written(SampleNotebook.empty().code("int a = 1;").code("int b = 0;", "a / b"));
    var pages = folder.resolve("pages");
    var said = say("run", notebook, "--out", pages.toString());
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err())
        .contains("sample.ipynb, cell 2, line 2: ArithmeticException: / by zero")
        .contains(">   2  a / b")
        .contains("As far as it ran: " + pages.resolve("sample.failed.ipynb"))
        .doesNotContain("\tat ");
    assertThat(said.out()).isEmpty();
    assertThat(pages.toFile().list())
        .containsExactlyInAnyOrder("sample.failed.ipynb", "sample.failed.html");
    assertThat(say("run", "--trace", notebook, "--out", pages.toString()).err()).contains("\tat ");
  }

  @Test
  void aCellThatDoesNotCompileIsShownWithTheMistake() throws IOException {
    var notebook = written(SampleNotebook.empty().code("int a = \"x\";"));
    var said = say("run", notebook, "--out", folder.resolve("pages").toString());
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err()).contains("cell 1, line 1: incompatible types").contains("^^^");
  }

  @Test
  void aProblemOfTheInputSpeaksInFourParts() throws IOException {
    var notebook =
        written(
            SampleNotebook.empty()
                .code(
                    "import agro.report.*;",
                    "throw InputProblem.of(\"a\").expected(\"b\").because(\"c\").mend(\"d\");"));
    var said = say("run", notebook, "--out", folder.resolve("pages").toString());
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err())
        .contains("cell 1, line 2: a.")
        .contains("Expected: b.")
        .contains("Why: c.")
        .contains("Mend: d.")
        .doesNotContain("InputProblem:");
  }

  @Test
  void whatIsWrongOnTheCommandLineIsSaid() throws IOException {
    var missing = say("run", "no-such.ipynb");
    assertThat(missing.status()).isEqualTo(1);
    assertThat(missing.err()).contains("no-such.ipynb").contains("Mend:").doesNotContain("\tat ");
    assertThat(say("run").status()).isEqualTo(2);
    assertThat(say("fly").status()).isEqualTo(2);
    var notebook = written(SampleNotebook.empty().tagged("parameters", "int n = 1;"));
    var unknown = say("run", notebook, "--set", "m=1", "--out", folder.resolve("pages").toString());
    assertThat(unknown.status()).isEqualTo(1);
    assertThat(unknown.err()).contains("n (int)");
    assertThat(say("run", notebook, "--set", "n").status()).isEqualTo(2);
  }

  @Test
  void helpIsPrinted() {
    assertThat(say("--help").out()).contains("run");
    assertThat(say().out()).contains("Usage:");
    assertThat(say("run", "--help").out()).contains("--set").contains("--code");
    assertThat(say("--version").out()).startsWith("agro ");
  }
}
