package agro.notebook.command;

import static agro.notebook.command.Said.say;
import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.run.SampleNotebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Several notebooks, each in a process of its own, started from the class path of the tests. */
@Tag("slow")
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class RunManyTest {

  @TempDir private Path folder;

  private void write(String name, SampleNotebook notebook) throws IOException {
    var file = folder.resolve("in").resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, notebook.json(), StandardCharsets.UTF_8);
  }

  private Said run(String... more) {
    var line = new ArrayList<String>();
    line.addAll(List.of("run", folder.resolve("in").toString()));
    line.addAll(List.of("--out", folder.resolve("out").toString()));
    line.addAll(List.of(more));
    return say(line.toArray(String[]::new));
  }

  private Path out(String name) {
    return folder.resolve("out").resolve(name);
  }

  @Test
  void allAreRunAndToldInOrderAndTheFailuresListed() throws IOException {
    write("a.ipynb", SampleNotebook.empty().tagged("summary", "Thread.sleep(1500);", "\"A °C\""));
    write("b.ipynb", SampleNotebook.empty().code("int n = 0;").code("", "1 / n"));
    write("c.ipynb", SampleNotebook.empty().code("System.out.println(\"not told\");"));
    write("sub/d.ipynb", SampleNotebook.empty().tagged("parameters", "int n = 1;"));
    Files.writeString(folder.resolve("in/e.ipynb"), "no notebook", StandardCharsets.UTF_8);
    var said = run("--parallel", "3", "--set", "n=12");
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.out())
        .containsSubsequence(
            "a.ipynb\n", "A °C\n", "a.html\n", "b.ipynb\n", "c.ipynb\n", "sub/d.html\n")
        .doesNotContain("not told");
    assertThat(said.err())
        .contains("b.ipynb, cell 2, line 2: ArithmeticException: / by zero")
        .contains("1 of 5  ", "5 of 5  ")
        .contains("2 of 5 notebooks failed:")
        .contains("e.ipynb: the file is not JSON (line 1, column 5)");
    assertThat(out("a.html")).isRegularFile();
    assertThat(out("b.html")).doesNotExist();
    assertThat(out("b.failed.html")).isRegularFile();
    assertThat(Files.readString(out("sub/d.ipynb"), StandardCharsets.UTF_8))
        .contains("int n = 12;");
  }

  @Test
  void theOthersAreStoppedWhenThatIsWanted() throws IOException {
    write("a.ipynb", SampleNotebook.empty().code("Thread.sleep(600_000);"));
    write("b.ipynb", SampleNotebook.empty().code("Thread.sleep(500);", "1 / 0"));
    write("c.ipynb", SampleNotebook.empty().code("1"));
    var said = run("--parallel", "2", "--fail-fast", "--quiet");
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err())
        .contains("1 of 3 notebooks failed:")
        .contains("Stopped for that reason, or not begun:")
        .containsPattern("(?m)^  .*a\\.ipynb$")
        .containsPattern("(?m)^  .*c\\.ipynb$");
    assertThat(folder.resolve("out").toFile().list())
        .containsExactlyInAnyOrder("b.failed.ipynb", "b.failed.html");
    assertThat(ProcessHandle.current().children().filter(ProcessHandle::isAlive)).isEmpty();
  }

  @Test
  void aProcessThatEndsBeforeItsNotebookIsNamed() throws IOException {
    write(
        "a.ipynb",
        SampleNotebook.empty()
            .code(
                "var halt = Runtime.class.getMethod(\"halt\", int.class);",
                "halt.invoke(Runtime.getRuntime(), 9);"));
    write("b.ipynb", SampleNotebook.empty().code("2"));
    var said = run("--quiet");
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err()).contains("a.ipynb: its process ended with status 9 before");
    assertThat(out("b.html")).isRegularFile();
  }
}
