package agro.notebook.magic;

import agro.notebook.kernel.CellEvaluator;
import agro.notebook.kernel.CellFailure;
import agro.notebook.kernel.CellOutput;
import agro.notebook.kernel.CellResult;
import agro.notebook.kernel.CellSource;
import agro.notebook.kernel.OutputRecorder;
import java.util.stream.Collectors;

/** A cell that was evaluated, with what it printed and showed. */
record Evaluated(CellResult result, String output) {

  static Evaluated by(CellEvaluator evaluator, String... lines) {
    var recorder = OutputRecorder.first();
    var result = evaluator.evaluate(new CellSource("cell 3", String.join("\n", lines)), recorder);
    return new Evaluated(
        result,
        recorder.outputs().stream().map(CellOutput::plainText).collect(Collectors.joining("\n")));
  }

  Object value() {
    return result.failure().isPresent() ? result.failure().get() : result.value().object();
  }

  CellFailure failure() {
    return result.failure().orElseThrow(() -> new AssertionError("it did not fail: " + this));
  }
}
