package agro.notebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.kernel.CellEvaluator;
import agro.notebook.kernel.CellSource;
import agro.notebook.kernel.OutputRecorder;
import java.nio.file.Path;
import java.util.ArrayList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cell of the rehearsal that no longer works would quietly make every start slower. */
@Tag("slow")
class RehearsalTest {

  @TempDir private Path folder;

  @Test
  void onlyTheCellsMeantToFailDo() {
    var failed = new ArrayList<String>();
    var path = folder.resolve("season").toString().replace("\\", "\\\\");
    var all = String.join("", Rehearsal.cells());
    assertThat(all).contains("Path.of(\"season\")");
    try (var evaluator = CellEvaluator.open()) {
      for (var cell : Rehearsal.cells()) {
        var code = cell.replace("Path.of(\"season\")", "Path.of(\"" + path + "\")");
        evaluator
            .evaluate(new CellSource("cell", code), OutputRecorder.first())
            .failure()
            .ifPresent(failure -> failed.add(failure.name() + " in " + cell.strip()));
      }
    }
    assertThat(failed).hasSize(2);
    assertThat(failed.get(0)).contains("ArrayIndexOutOfBounds", "none[1]");
    assertThat(failed.get(1)).contains("int wrong = \"text\"");
  }
}
