package agro.notebook.run;

import agro.notebook.kernel.CellEvaluator;
import agro.notebook.kernel.CellResult;
import agro.notebook.kernel.CellSource;
import agro.notebook.kernel.LongOutput;
import agro.notebook.kernel.OutputRecorder;
import agro.notebook.run.NotebookCell.Content;
import agro.notebook.run.NotebookRunner.AfterFailure;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** One pass through the cells of a notebook, from the first to the last. */
final class NotebookPass {

  /** Who looks at the clock while a cell runs. */
  interface CellWatch {
    /**
     * Evaluates a cell.
     *
     * @param cell how messages call the cell
     * @param evaluation what to do
     * @return the result
     */
    CellResult timed(String cell, Supplier<CellResult> evaluation);
  }

  private final CellEvaluator evaluator;
  private final List<NotebookCell> cells;
  private final InjectedParameters injected;
  private final Map<NotebookCell, OutputRecorder> outputs = new LinkedHashMap<>();
  private final List<CellOutcome> outcomes = new ArrayList<>();
  private RunListener listener = RunListener.silent();
  private AfterFailure afterFailure = AfterFailure.END;
  private OutputRecorder recorder = OutputRecorder.first();
  private boolean parametersSet;
  private int codeCells;

  NotebookPass(CellEvaluator evaluator, List<NotebookCell> cells, InjectedParameters injected) {
    this.evaluator = evaluator;
    this.cells = cells;
    this.injected = injected;
    this.parametersSet = injected.isEmpty();
    this.codeCells = (int) cells.stream().filter(cell -> cell.content() == Content.CODE).count();
    // The cell that is still to be put in for the parameters counts as well.
    if (!parametersSet && cells.stream().anyMatch(InjectedParameters::isDeclaredIn)) {
      codeCells++;
    }
  }

  NotebookPass heardBy(RunListener other) {
    listener = other;
    return this;
  }

  NotebookPass endingAfter(AfterFailure other) {
    afterFailure = other;
    return this;
  }

  NotebookRun run(NotebookDocument notebook, CellWatch watch) {
    for (var at = 0; at < cells.size(); at++) {
      var cell = cells.get(at);
      if (cell.content() == Content.CODE) {
        var outcome = evaluated(cell, watch);
        if (outcome.stopsRun() && afterFailure == AfterFailure.END) {
          break;
        }
        if (!parametersSet && InjectedParameters.isDeclaredIn(cell)) {
          cells.add(at + 1, injected.cell(outcome.result().declared()));
          parametersSet = true;
        }
      }
    }
    return new NotebookRun(notebook, cells, finished());
  }

  private CellOutcome evaluated(NotebookCell cell, CellWatch watch) {
    var number = outcomes.size() + 1;
    listener.cellStarts(number, codeCells);
    recorder = recorder.next();
    outputs.put(cell, recorder);
    var source = new CellSource("cell " + number, cell.source());
    var output = LongOutput.of(recorder, source.name());
    var start = System.nanoTime();
    var result = watch.timed(source.name(), () -> evaluator.evaluate(source, output));
    output.finish();
    var time = Duration.ofNanos(System.nanoTime() - start);
    var outcome = new CellOutcome(cell, number, recorder.outputs(), result, time);
    outcomes.add(outcome);
    listener.cellEnded(outcome);
    return outcome;
  }

  /** The outcomes with the outputs as they are now: later cells may have replaced some. */
  private List<CellOutcome> finished() {
    return outcomes.stream()
        .map(
            one ->
                new CellOutcome(
                    one.cell(),
                    one.number(),
                    outputs.get(one.cell()).outputs(),
                    one.result(),
                    one.time()))
        .toList();
  }
}
