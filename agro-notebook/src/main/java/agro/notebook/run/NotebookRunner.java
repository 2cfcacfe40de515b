package agro.notebook.run;

import agro.notebook.kernel.CellEvaluator;
import agro.report.InputProblem;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

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
  private final Optional<Duration> cellTimeout;
  private final AfterFailure afterFailure;

  private NotebookRunner(
      Map<String, String> parameters,
      RunListener listener,
      Optional<Duration> cellTimeout,
      AfterFailure afterFailure) {
    this.parameters = Collections.unmodifiableMap(new LinkedHashMap<>(parameters));
    this.listener = Objects.requireNonNull(listener, "listener");
    this.cellTimeout = cellTimeout;
    this.afterFailure = afterFailure;
  }

  /** What a run does after a cell that failed although nobody said that it would. */
  enum AfterFailure {
    END,
    GO_ON
  }

  /**
   * A runner that sets no parameters and tells nobody how far it is.
   *
   * @return the runner
   */
  public static NotebookRunner standard() {
    return new NotebookRunner(Map.of(), RunListener.silent(), Optional.empty(), AfterFailure.END);
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
    return new NotebookRunner(more, listener, cellTimeout, afterFailure);
  }

  /**
   * This runner with somebody who hears how far it is.
   *
   * @param other the listener
   * @return a new runner
   */
  public NotebookRunner withListener(RunListener other) {
    return new NotebookRunner(parameters, other, cellTimeout, afterFailure);
  }

  /**
   * This runner with a limit for each cell. A cell that takes longer is interrupted and has failed.
   *
   * @param most the most that a cell may take
   * @return a new runner
   * @throws IllegalArgumentException when that is no time at all
   */
  public NotebookRunner withCellTimeout(Duration most) {
    if (most.isZero() || most.isNegative()) {
      throw new IllegalArgumentException("no cell ends within " + most);
    }
    return new NotebookRunner(parameters, listener, Optional.of(most), afterFailure);
  }

  /**
   * This runner for notebooks whose later cells are worth running although an earlier one failed.
   *
   * @return a new runner
   */
  public NotebookRunner goingOnAfterErrors() {
    return new NotebookRunner(parameters, listener, cellTimeout, AfterFailure.GO_ON);
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
      if (cells.stream().noneMatch(InjectedParameters::isDeclaredIn)) {
        throw injected.noneDeclared();
      }
    }
    try (var evaluator = CellEvaluator.open()) {
      var pass =
          new NotebookPass(evaluator, cells, injected).heardBy(listener).endingAfter(afterFailure);
      if (cellTimeout.isEmpty()) {
        return pass.run(notebook, (cell, evaluation) -> evaluation.get());
      }
      try (var timer = new CellTimer(evaluator, cellTimeout.get())) {
        return pass.run(notebook, timer::timed);
      }
    }
  }
}
