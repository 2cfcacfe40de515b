package agro.notebook.command;

import static agro.notebook.command.Said.say;
import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.run.SampleNotebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run writes, what it refuses to overwrite, and what it says. */
class RunFilesTest {

  private static final SampleNotebook GOOD = SampleNotebook.empty().code("1 + 1");
  private static final SampleNotebook BAD = SampleNotebook.empty().code("1 / 0").code("3");

  @TempDir private Path folder;

  private Path write(String name, SampleNotebook notebook) throws IOException {
    var file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, notebook.json(), StandardCharsets.UTF_8);
  }

  private Said run(Path notebook, String... more) {
    var pages = folder.resolve("pages").toString();
    var all = Stream.concat(Stream.of("run", notebook.toString(), "--out", pages), Stream.of(more));
    return say(all.toArray(String[]::new));
  }

  private List<String> pages() {
    return Stream.of(folder.resolve("pages").toFile().list()).sorted().toList();
  }

  private String page(String name) throws IOException {
    return Files.readString(folder.resolve("pages").resolve(name), StandardCharsets.UTF_8);
  }

  @Test
  void aFailureLeavesTheLastSuccessAndASuccessRemovesTheFailure() throws IOException {
    var notebook = write("a.ipynb", GOOD);
    assertThat(run(notebook).status()).isZero();
    assertThat(pages()).containsExactly("a.html", "a.ipynb");
    var good = page("a.ipynb");
    write("a.ipynb", BAD);
    assertThat(run(notebook).status()).isEqualTo(1);
    assertThat(pages()).containsExactly("a.failed.html", "a.failed.ipynb", "a.html", "a.ipynb");
    assertThat(page("a.ipynb")).isEqualTo(good);
    assertThat(page("a.failed.ipynb"))
        .contains("\"ename\": \"java.lang.ArithmeticException\"")
        .contains("\"failures\": [\n    \"cell 1, line 1\"");
    assertThat(page("a.failed.html"))
        .contains("/ by zero")
        .contains("This run ended at <a href=\"#first-failure\">cell 1, line 1</a>")
        .contains("Java, not run");
    write("a.ipynb", GOOD);
    assertThat(run(notebook).status()).isZero();
    assertThat(pages()).containsExactly("a.html", "a.ipynb");
  }

  @Test
  void errorsMayBeAllowed() throws IOException {
    var said = run(write("a.ipynb", BAD), "--allow-errors");
    assertThat(said.status()).isZero();
    assertThat(said.err()).contains("cell 1, line 1: ArithmeticException: / by zero");
    assertThat(pages()).containsExactly("a.html", "a.ipynb");
    assertThat(page("a.ipynb")).contains("\"ename\"").contains("\"execution_count\": 2");
  }

  @Test
  void aCellThatTakesTooLongHasFailed() throws IOException {
    var slow = SampleNotebook.empty().code("int a = 1;", "Thread.sleep(600_000);");
    var said = run(write("a.ipynb", slow), "--cell-timeout", "300ms");
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err()).contains("a.ipynb, cell 1").contains("ran longer than 300 ms");
    assertThat(page("a.failed.ipynb")).contains("\"ename\": \"CellTimeout\"");
    assertThat(run(write("b.ipynb", GOOD), "--cell-timeout", "PT2M").status()).isZero();
    assertThat(run(write("b.ipynb", GOOD), "--cell-timeout", "soon").status()).isEqualTo(2);
    assertThat(run(write("b.ipynb", GOOD), "--cell-timeout", "0s").status()).isEqualTo(2);
  }

  @Test
  void twoRunsGiveTheSameBytes() throws IOException {
    var notebook =
        write("a.ipynb", SampleNotebook.empty().code("display(List.of(1));", "Map.of(1, 2)"));
    run(notebook);
    var first = page("a.ipynb") + page("a.html");
    run(notebook);
    assertThat(page("a.ipynb") + page("a.html")).isEqualTo(first);
    assertThat(first).doesNotContain("\"seconds\"");
  }

  @Test
  void timesAreToldOnRequest() throws IOException {
    var said = run(write("a.ipynb", GOOD), "--timings");
    assertThat(said.out()).contains(" s in all, 1 cells").containsPattern("\\d s  cell 1  1 \\+ 1");
    assertThat(page("a.ipynb")).containsPattern("\"agro\": \\{\\s+\"seconds\": \\d");
  }

  @Test
  void aQuietRunSaysItsResultsAlone() throws IOException {
    var notebook = write("a.ipynb", GOOD);
    assertThat(run(notebook).err()).matches("cell 1 of 1  \\d+\\.\\d s\\R");
    assertThat(run(notebook, "--quiet").err()).isEmpty();
    assertThat(run(notebook, "-q").out()).contains("a.html");
  }

  @Test
  void theNotebookItselfIsOverwrittenOnRequestAlone() throws IOException {
    var notebook = write("pages/a.ipynb", GOOD);
    var before = page("a.ipynb");
    var refused = run(notebook);
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("would overwrite the notebook").contains("--in-place");
    assertThat(page("a.ipynb")).isEqualTo(before);
    assertThat(run(notebook, "--in-place").status()).isZero();
    assertThat(page("a.ipynb")).contains("\"execution_count\": 1").isNotEqualTo(before);
    write("pages/a.ipynb", BAD);
    assertThat(run(notebook, "--in-place").status()).isEqualTo(1);
    assertThat(page("a.ipynb")).isEqualTo(BAD.json());
    assertThat(pages()).contains("a.failed.ipynb");
  }

  @Test
  void twoNotebooksThatWouldWriteOneFileAreRefused() throws IOException {
    var one = write("x/a.ipynb", GOOD);
    var two = write("y/a.ipynb", GOOD);
    var said = run(one, two.toString());
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.err()).contains("would both write").contains("a.ipynb");
    var left = write("x/b.ipynb", SampleNotebook.empty().tagged("picture:map", "1"));
    var right = write("y/c.ipynb", SampleNotebook.empty().tagged("picture:map", "2"));
    var pictures = run(left, right.toString(), "--pictures", folder.toString());
    assertThat(pictures.status()).isEqualTo(2);
    assertThat(pictures.err()).contains("map.png");
  }

  @Test
  void whatCannotBeRunIsSaid() throws IOException {
    var empty = Files.createDirectory(folder.resolve("empty"));
    var said = run(empty);
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err()).contains("this folder holds no notebook").contains("Mend:");
    assertThat(run(write("a.ipynb", GOOD), "--parallel", "0").status()).isEqualTo(2);
    assertThat(say("run").err()).contains("no notebook is named");
    assertThat(say("run", "--help").out()).contains("Exit status:").contains("--cell-timeout");
  }

  @Test
  void parametersAreCheckedBeforeAnythingRuns() throws IOException {
    var one = write("a.ipynb", SampleNotebook.empty().tagged("parameters", "int days = 3;"));
    var two = write("b.ipynb", SampleNotebook.empty().tagged("parameters", "double base = 7;"));
    var unknown = run(one, two.toString(), "--set", "day=4");
    assertThat(unknown.status()).isEqualTo(1);
    assertThat(unknown.err()).contains("\"day\"").contains("days (int), base (double)");
    var unfit = run(one, two.toString(), "--set", "days=four");
    assertThat(unfit.status()).isEqualTo(1);
    assertThat(unfit.err())
        .contains("the value \"four\" of days is no int")
        .doesNotContain(" of 2");
    assertThat(folder.resolve("pages")).doesNotExist();
  }

  @Test
  void parametersMayComeFromAFile() throws IOException {
    var notebook =
        write(
            "a.ipynb",
            SampleNotebook.empty()
                .tagged("parameters", "String place = \"x\";", "int days = 1;")
                .tagged("summary", "place + days"));
    var file = folder.resolve("values.txt");
    Files.writeString(file, "# mine\n\nplace = a=b °C\ndays=2\n", StandardCharsets.UTF_8);
    assertThat(run(notebook, "--set-from", file.toString()).out()).startsWith("a=b °C2\n");
    assertThat(run(notebook, "--set-from", file.toString(), "--set", "days=7").out())
        .startsWith("a=b °C7\n");
    Files.writeString(file, "days=2\ndays\n", StandardCharsets.UTF_8);
    var refused = run(notebook, "--set-from", file.toString());
    assertThat(refused.status()).isEqualTo(1);
    assertThat(refused.err()).contains("values.txt, line 2").contains("NAME=VALUE");
    assertThat(run(notebook, "--set-from", "none.txt").err()).contains("could not be read");
  }
}
