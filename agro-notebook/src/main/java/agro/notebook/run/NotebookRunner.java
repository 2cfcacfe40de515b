package agro.notebook.run;

import agro.notebook.kernel.CellEvaluator;
import agro.notebook.kernel.CellSource;
import agro.notebook.kernel.OutputRecorder;
import agro.notebook.run.NotebookCell.Content;
import agro.report.InputProblem;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Runs notebooks in this process, cell by cell. Immutable; a runner may be used again, each run
 * begins with nothing declared.
 *
 * <pre>{@code
 * var run = NotebookRunner.standard().withParameter("folder", "demo-data/osmere-vale").run(file);
 * var forecast = run.checked("forecast", FlightForecast.class);
 * }</pre>
 */
public final class NotebookRunner {

  private final Map<String, String> parameters;
  private final RunListener listener;

  private NotebookRunner(Map<String, String> parameters, RunListener listener) {
    this.parameters = Collections.unmodifiableMap(new LinkedHashMap<>(parameters));
    this.listener = Objects.requireNonNull(listener, "listener");
  }

  /**
   * A runner that sets no parameters and tells nobody how far it is.
   *
   * @return the runner
   */
  public static NotebookRunner standard() {
    return new NotebookRunner(Map.of(), RunListener.silent());
  }

  /**
   * This runner with one more parameter set.
   *
   * @param name a variable declared in the cell tagged {@code parameters}
   * @param value its value as text: text as it is, numbers with a decimal point, dates in ISO form
   * @return a new runner
   */
  public NotebookRunner withParameter(String name, String value) {
    var more = new LinkedHashMap<>(parameters);
    more.put(name, Objects.requireNonNull(value, "value"));
    return new NotebookRunner(more, listener);
  }

  /**
   * This runner with somebody who hears how far it is.
   *
   * @param other the listener
   * @return a new runner
   */
  public NotebookRunner withListener(RunListener other) {
    return new NotebookRunner(parameters, other);
  }

  /**
   * Runs a notebook file. The first cell that fails ends the run, unless it is tagged {@code
   * raises-exception}; the result says so.
   *
   * @param file the notebook
   * @return what came of it
   * @throws InputProblem when the file is no Java notebook, or it has no such parameter
   */
  public NotebookRun run(Path file) {
    return run(NotebookDocument.read(file));
  }

  /**
   * Runs a notebook.
   *
   * @param notebook the notebook
   * @return what came of it
   * @throws InputProblem when it has no such parameter
   */
  public NotebookRun run(NotebookDocument notebook) {
    var injected = new InjectedParameters(notebook.name(), parameters);
    var cells = new ArrayList<>(notebook.cells());
    if (!parameters.isEmpty()) {
      cells.removeIf(cell -> cell.tags().contains(InjectedParameters.INJECTED));
      if (cells.stream().noneMatch(NotebookRunner::declaresParameters)) {
        throw injected.noneDeclared();
      }
    }
    try (var evaluator = CellEvaluator.open()) {
      return new Pass(evaluator, cells, injected).run(notebook);
    }
  }

  private static boolean declaresParameters(NotebookCell cell) {
    return cell.content() == Content.CODE && cell.tags().contains(InjectedParameters.DECLARING);
  }

  /** One pass through the cells of a notebook. */
  private final class Pass {
    private final CellEvaluator evaluator;
    private final List<NotebookCell> cells;
    private final InjectedParameters injected;
    private final Map<NotebookCell, OutputRecorder> outputs = new LinkedHashMap<>();
    private final List<CellOutcome> outcomes = new ArrayList<>();
    private OutputRecorder recorder = OutputRecorder.first();
    private boolean parametersSet = parameters.isEmpty();

    Pass(CellEvaluator evaluator, List<NotebookCell> cells, InjectedParameters injected) {
      this.evaluator = evaluator;
      this.cells = cells;
      this.injected = injected;
    }

    NotebookRun run(NotebookDocument notebook) {
      for (var at = 0; at < cells.size(); at++) {
        var cell = cells.get(at);
        if (cell.content() == Content.CODE) {
          var outcome = evaluated(cell);
          if (outcome.stopsRun()) {
            break;
          }
          if (!parametersSet && declaresParameters(cell)) {
            cells.add(at + 1, injected.cell(outcome.result().declared()));
            parametersSet = true;
          }
        }
      }
      return new NotebookRun(notebook, cells, finished());
    }

    /** Cells of code in all, with the one that is still to be put in for the parameters. */
    private int codeCells() {
      var there = (int) cells.stream().filter(NotebookRunner::isCode).count();
      var toCome = !parametersSet && cells.stream().anyMatch(NotebookRunner::declaresParameters);
      return there + (toCome ? 1 : 0);
    }

    private CellOutcome evaluated(NotebookCell cell) {
      var number = outcomes.size() + 1;
      listener.cellStarts(number, codeCells());
      recorder = recorder.next();
      outputs.put(cell, recorder);
      var start = System.nanoTime();
      var result = evaluator.evaluate(new CellSource("cell " + number, cell.source()), recorder);
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

  private static boolean isCode(NotebookCell cell) {
    return cell.content() == Content.CODE;
  }
}
