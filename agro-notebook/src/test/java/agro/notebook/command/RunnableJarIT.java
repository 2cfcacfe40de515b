package agro.notebook.command;

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
import org.junit.jupiter.api.io.TempDir;

/** The jar as a user starts it: the agent comes from its manifest, the charset from nobody. */
@Tag("slow")
class RunnableJarIT {

  private static final Path JAR = Path.of("target", "agro-notebook.jar");

  @TempDir private Path folder;

  private record Said(int status, String out, String err) {}

  private Said say(String... arguments) throws IOException, InterruptedException {
    var command = new ArrayList<String>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Dfile.encoding=US-ASCII");
    command.add("-jar");
    command.add(JAR.toAbsolutePath().toString());
    command.addAll(List.of(arguments));
    var out = folder.resolve("out.txt");
    var err = folder.resolve("err.txt");
    var process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
    return new Said(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  private void write(SampleNotebook notebook) throws IOException {
    Files.writeString(folder.resolve("sample.ipynb"), notebook.json(), StandardCharsets.UTF_8);
  }

  @Test
  void redefinedMethodsKeepTheValuesMadeFromThem() throws IOException, InterruptedException {
    write(
        SampleNotebook.empty()
            .code("int f() { return 1; }", "var v = f();")
            .code("class Trap { int moths() { return 1; } }", "var trap = new Trap();")
            .code("int f() { return 2; }")
            .code("class Trap { int moths() { return 2; } }")
            .tagged(
                "summary", "\"v \" + v + \", f \" + f() + \", moths \" + trap.moths() + \" °C\""));
    var said = say("run", "sample.ipynb");
    assertThat(said.err).doesNotContain("Exception");
    assertThat(said.status).isZero();
    assertThat(said.out).startsWith("v 1, f 2, moths 2 °C\n");
    assertThat(folder.resolve("target/pages/sample.html")).isRegularFile();
    assertThat(folder.resolve("target/pages/sample.ipynb")).isRegularFile();
  }

  @Test
  void tablesAndPicturesWorkWithoutAScreen() throws IOException, InterruptedException {
    write(
        SampleNotebook.empty()
            .code(
                "import tech.tablesaw.api.*;", "Table.create(\"T\", IntColumn.create(\"n\", 1, 2))")
            .code(
                "import org.knowm.xchart.*;",
                "var chart = new XYChartBuilder().width(300).height(200).build();",
                "chart.addSeries(\"a\", new double[] {1, 2}, new double[] {3, 4});",
                "BitmapEncoder.getBufferedImage(chart)"));
    var said = say("run", "sample.ipynb", "--code", "shown");
    assertThat(said.err).doesNotContain("SLF4J").doesNotContain("Exception");
    assertThat(said.status).isZero();
    var page = Files.readString(folder.resolve("target/pages/sample.html"), StandardCharsets.UTF_8);
    assertThat(page).contains("<caption>T</caption>").contains("data:image/png;base64,iVBOR");
  }

  @Test
  void theVersionIsKnown() throws IOException, InterruptedException {
    assertThat(say("--version").out).matches("agro \\d+\\.\\d+.*\\R");
  }

  @Test
  void aFailureEndsWithItsStatus() throws IOException, InterruptedException {
    write(SampleNotebook.empty().code("1 / 0"));
    var said = say("run", "sample.ipynb");
    assertThat(said.status).isEqualTo(1);
    assertThat(said.err).contains("cell 1, line 1: ArithmeticException").doesNotContain("\tat ");
    assertThat(folder.resolve("target/pages/sample.failed.html")).isRegularFile();
    assertThat(folder.resolve("target/pages/sample.html")).doesNotExist();
  }
}
