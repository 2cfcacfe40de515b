package agro.notebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.run.SampleNotebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Stop checks and redefined classes in the runnable jar: a notebook opens an evaluator of its own,
 * redefines a method there and interrupts it.
 */
@Tag("slow")
class StoppedCellsIT {

  @TempDir private Path folder;

  private String said(SampleNotebook notebook) throws IOException, InterruptedException {
    Files.writeString(folder.resolve("sample.ipynb"), notebook.json(), StandardCharsets.UTF_8);
    var out = folder.resolve("out.txt");
    var process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                Path.of("target", "agro-notebook.jar").toAbsolutePath().toString(),
                "run",
                "sample.ipynb")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start();
    var ended = process.waitFor(3, TimeUnit.MINUTES);
    process.destroyForcibly();
    assertThat(ended).isTrue();
    return Files.readString(out, StandardCharsets.UTF_8);
  }

  @Test
  void aRedefinedMethodIsInterruptedAndValuesAreKept() throws IOException, InterruptedException {
    var said =
        said(
            SampleNotebook.empty()
                .code(
                    "import agro.notebook.kernel.*;",
                    "var evaluator = CellEvaluator.open();",
                    "var recorder = OutputRecorder.first();",
                    "CellResult inner(String code) {",
                    "  return evaluator.evaluate(new CellSource(\"inner\", code), recorder);",
                    "}",
                    "inner(\"void go() { }\\nint kept() { return 5; }\\nvar v = kept();\");",
                    "inner(\"int kept() { return 6; }\");",
                    "inner(\"void go() { System.out.print(1); while (true) { } }\");")
                .code(
                    "var running = CompletableFuture.supplyAsync(() -> inner(\"go();\"));",
                    "while (recorder.outputs().isEmpty()) Thread.sleep(5);",
                    "evaluator.interrupt();",
                    "var kind = running.get(60, TimeUnit.SECONDS).failure().get().kind();")
                .tagged(
                    "summary",
                    "\"redefines \" + CellEvaluator.redefinesClasses() + \", \" + kind + \", v \""
                        + " + inner(\"v * 10 + kept()\").value().object()"));
    assertThat(said).contains("redefines true, INTERRUPTED, v 56");
  }
}
