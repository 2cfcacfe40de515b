package agro.notebook.installed;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The installed kernel under Debian's jupyter_client, nbclient and jupyter_kernel_test. */
@Tag("jupyter")
class RealJupyterIT {

  /** Replies must come within a second; a machine that does other work besides gets some more. */
  private static final String SECONDS = "5";

  private static final Pattern COUNTS =
      Pattern.compile(
          "(\\S+\\.ipynb): (\\d+) cells, (\\d+) pictures, (\\d+) tables, (\\d+) errors,"
              + " (\\d+) not run, .*");

  private static InstalledKernel kernel;

  @BeforeAll
  static void install() throws IOException, InterruptedException {
    kernel = InstalledKernel.once();
  }

  @Test
  void jupyterListsTheKernel() throws IOException, InterruptedException {
    var told =
        CommandRun.of(
            List.of("/usr/bin/jupyter", "kernelspec", "list", "--json"),
            InstalledKernel.TOP,
            kernel.environment());
    assertThat(told.status()).as(told.all()).isZero();
    var spec =
        JsonParser.parseString(told.out())
            .getAsJsonObject()
            .getAsJsonObject("kernelspecs")
            .getAsJsonObject(InstalledKernel.NAME)
            .getAsJsonObject("spec");
    assertThat(spec.get("display_name").getAsString()).isEqualTo("Java (agro)");
    assertThat(spec.get("interrupt_mode").getAsString()).isEqualTo("message");
  }

  /** In the folder of the notebooks, as a notebook server runs them. */
  @Test
  void everyNotebookRunsWithItsTablesAndFigures() throws IOException, InterruptedException {
    var notebooks = notebooks();
    var arguments =
        new ArrayList<>(
            List.of(InstalledKernel.NAME, InstalledKernel.TOP.resolve("notebooks").toString()));
    notebooks.forEach(notebook -> arguments.add(notebook.toString()));
    var told = kernel.script("execute_notebooks.py", arguments.toArray(String[]::new));
    assertThat(told.status()).as(told.all()).isZero();
    var lines = told.out().strip().lines().toList();
    assertThat(lines).as(told.all()).hasSameSizeAs(notebooks);
    for (var i = 0; i < lines.size(); i++) {
      var counts = COUNTS.matcher(lines.get(i));
      assertThat(counts.matches()).as(lines.get(i)).isTrue();
      assertThat(counts.group(1)).isEqualTo(notebooks.get(i).getFileName().toString());
      assertThat(Integer.parseInt(counts.group(2))).isPositive();
      assertThat(Integer.parseInt(counts.group(3)))
          .as("pictures: %s", lines.get(i))
          .isGreaterThanOrEqualTo(cellsTaggedAsPicture(notebooks.get(i)));
      assertThat(Integer.parseInt(counts.group(4))).as("tables: %s", lines.get(i)).isPositive();
    }
  }

  @Test
  void interruptsRestartEndAndLongOutput() throws IOException, InterruptedException {
    var told = kernel.script("kernel_behaviour.py", InstalledKernel.NAME, SECONDS);
    assertThat(told.status()).as(told.all()).isZero();
    assertThat(told.out().lines().filter(line -> line.startsWith("ok: ")))
        .as(told.all())
        .hasSizeGreaterThanOrEqualTo(12);
  }

  /** The one test that may be skipped asks for a pager, which a kernel need not have. */
  @Test
  void theKernelConformsToTheProtocol() throws IOException, InterruptedException {
    var told = kernel.script("kernel_conformance.py", InstalledKernel.NAME);
    assertThat(told.status()).as(told.all()).isZero();
    assertThat(told.all())
        .containsPattern("Ran \\d\\d+ tests")
        .containsPattern("\\nOK( \\(skipped=1\\))?\\n")
        .doesNotContain("FAILED");
  }

  private static List<Path> notebooks() throws IOException {
    try (var files = Files.list(InstalledKernel.TOP.resolve("notebooks"))) {
      var found = files.filter(file -> file.toString().endsWith(".ipynb")).sorted().toList();
      assertThat(found).isNotEmpty();
      return found;
    }
  }

  private static int cellsTaggedAsPicture(Path notebook) throws IOException {
    var cells =
        JsonParser.parseString(Files.readString(notebook, StandardCharsets.UTF_8))
            .getAsJsonObject()
            .getAsJsonArray("cells");
    return (int)
        StreamSupport.stream(cells.spliterator(), false)
            .map(cell -> cell.getAsJsonObject().getAsJsonObject("metadata").get("tags"))
            .filter(tags -> tags != null && isPicture(tags))
            .count();
  }

  private static boolean isPicture(JsonElement tags) {
    return StreamSupport.stream(tags.getAsJsonArray().spliterator(), false)
        .anyMatch(tag -> tag.getAsString().startsWith("picture:"));
  }
}
