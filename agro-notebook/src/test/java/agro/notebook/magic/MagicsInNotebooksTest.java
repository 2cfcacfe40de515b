package agro.notebook.magic;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.kernel.CellEvaluator;
import agro.notebook.kernel.CellFailure.Kind;
import agro.notebook.run.NotebookRunner;
import agro.notebook.run.SampleNotebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MagicsInNotebooksTest {

  @TempDir private Path folder;

  @Test
  void theRunnerKnowsThem() throws IOException {
    SampleJar.with("moth.Wing", "public static int spots() { return 7; }")
        .writeTo(folder.resolve("wing.jar"));
    var code =
        Files.writeString(folder.resolve("twice.java"), "int twice(int n) { return 2 * n; }");
    var run =
        NotebookRunner.standard()
            .run(
                SampleNotebook.empty()
                    .code("%classpath " + folder.resolve("wing.jar"), "%load " + code)
                    .tagged("check:spots", "%%time", "twice(moth.Wing.spots())")
                    .document());
    assertThat(run.checked("spots", Integer.class)).isEqualTo(14);
    assertThat(run.toNotebook()).contains("Wall time: ", "Added to the class path");
  }

  @Test
  void timedCodeIsInterrupted() throws Exception {
    try (var evaluator = CellEvaluator.open()) {
      var sleeping =
          CompletableFuture.supplyAsync(
              () -> Evaluated.by(evaluator, "%time Thread.sleep(600_000)").failure());
      while (!sleeping.isDone()) {
        evaluator.interrupt();
        Thread.sleep(20);
      }
      assertThat(sleeping.get().kind()).isEqualTo(Kind.INTERRUPTED);
      assertThat(Evaluated.by(evaluator, "%time 1").value()).isEqualTo(1);
    }
  }
}
