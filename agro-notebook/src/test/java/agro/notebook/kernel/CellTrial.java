package agro.notebook.kernel;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;

/** An evaluator for tests, whose cells are numbered and whose output is read as text. */
final class CellTrial implements AutoCloseable {

  private static final int LONGEST_SECONDS = 60;

  private final CellEvaluator evaluator = CellEvaluator.open();
  private int number;
  private volatile OutputRecorder recorder = OutputRecorder.first();

  CellResult run(String code) {
    return run(code, CellInput.none());
  }

  CellResult run(String code, CellInput input) {
    return evaluated(code, input, fresh());
  }

  private OutputRecorder fresh() {
    recorder = OutputRecorder.first();
    return recorder;
  }

  private CellResult evaluated(String code, CellInput input, OutputRecorder sink) {
    return evaluator.evaluate(new CellSource("cell " + ++number, code), sink, input);
  }

  /** The plain text of the value, or what went wrong. */
  String shown(String code) {
    var result = run(code);
    return result
        .failure()
        .map(failure -> failure.kind() + ": " + failure.message())
        .orElse(result.value().shown().plainText());
  }

  CompletableFuture<CellResult> start(String code) {
    // From here on what is printed counts as this cell's, although its thread may be slow to begin.
    var sink = fresh();
    return CompletableFuture.supplyAsync(
        () -> evaluated(code, CellInput.none(), sink), task -> new Thread(task).start());
  }

  /** Starts a cell, waits until it has printed something, and interrupts it. */
  CellResult interrupted(String code) throws Exception {
    var running = start(code);
    awaitOutput();
    return interrupted(running);
  }

  CellResult interrupted(CompletableFuture<CellResult> running)
      throws InterruptedException, ExecutionException, TimeoutException {
    evaluator.interrupt();
    return running.get(LONGEST_SECONDS, TimeUnit.SECONDS);
  }

  void awaitOutput() throws InterruptedException {
    awaitOutput("");
  }

  /** Waits until something is printed that has a text in it. */
  void awaitOutput(String text) throws InterruptedException {
    for (var waited = 0; waited < LONGEST_SECONDS * 200; waited++) {
      var printed = printed();
      if (!printed.isEmpty() && printed.contains(text)) {
        return;
      }
      Thread.sleep(5);
    }
  }

  String printed() {
    return recorder.outputs().stream().map(CellOutput::plainText).collect(Collectors.joining());
  }

  CellEvaluator evaluator() {
    return evaluator;
  }

  @Override
  public void close() {
    evaluator.close();
  }
}
