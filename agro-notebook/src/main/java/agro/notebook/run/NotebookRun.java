package agro.notebook.run;

import agro.notebook.display.MimeBundle;
import java.util.Base64;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** What came of running a notebook: its outputs in both forms and the live values of its cells. */
public final class NotebookRun {

  private static final String SUMMARY = "summary";

  private final NotebookDocument notebook;
  private final List<NotebookCell> cells;
  private final List<CellOutcome> outcomes;
  private final Map<NotebookCell, CellOutcome> byCell = new HashMap<>();

  NotebookRun(NotebookDocument notebook, List<NotebookCell> cells, List<CellOutcome> outcomes) {
    this.notebook = notebook;
    this.cells = List.copyOf(cells);
    this.outcomes = List.copyOf(outcomes);
    outcomes.forEach(outcome -> byCell.put(outcome.cell(), outcome));
  }

  /**
   * The notebook as it was read.
   *
   * @return the notebook
   */
  public NotebookDocument notebook() {
    return notebook;
  }

  /**
   * All cells of the run, with the one that set the parameters.
   *
   * @return the cells in order
   */
  public List<NotebookCell> cells() {
    return cells;
  }

  /**
   * The cells of code that ran.
   *
   * @return how each of them ended, in order
   */
  public List<CellOutcome> outcomes() {
    return outcomes;
  }

  /**
   * How a cell ended.
   *
   * @param cell one of {@link #cells}
   * @return empty when it did not run
   */
  public Optional<CellOutcome> outcome(NotebookCell cell) {
    return Optional.ofNullable(byCell.get(cell));
  }

  /**
   * The first cell that failed; the run ended there unless the runner goes on after errors.
   *
   * @return empty when all is well
   */
  public Optional<CellOutcome> failed() {
    return outcomes.stream().filter(CellOutcome::stopsRun).findFirst();
  }

  /**
   * All cells that failed although their author did not say that they would.
   *
   * @return how each of them ended; at most one unless the runner goes on after errors
   */
  public List<CellOutcome> failures() {
    return outcomes.stream().filter(CellOutcome::stopsRun).toList();
  }

  /**
   * The live value of a cell tagged {@code check:NAME}.
   *
   * @param name the name in the tag
   * @param type the type of the value
   * @param <T> the type of the value
   * @return the value of the cell's last expression
   * @throws IllegalStateException when the run failed, no cell has that tag, or its value is of
   *     another type; the message says which
   */
  public <T> T checked(String name, Class<T> type) {
    failed().ifPresent(NotebookRun::refuse);
    var outcome =
        outcomes.stream()
            .filter(each -> each.cell().check().filter(name::equals).isPresent())
            .findFirst()
            .orElseThrow(() -> new IllegalStateException(noCheck(name)));
    var value = outcome.result().value().object();
    if (!type.isInstance(value)) {
      throw new IllegalStateException(
          "cell "
              + outcome.number()
              + ", tagged check:"
              + name
              + ", must end with an expression of type "
              + type.getSimpleName()
              + ", but its value is "
              + (value == null ? "nothing" : "a " + value.getClass().getSimpleName()));
    }
    return type.cast(value);
  }

  private static void refuse(CellOutcome failed) {
    var failure = failed.result().failure().orElseThrow();
    throw new IllegalStateException(
        String.join("\n", failure.trace()), failure.thrown().orElse(null));
  }

  private String noCheck(String name) {
    var known =
        cells.stream().flatMap(cell -> cell.check().stream()).collect(Collectors.joining(", "));
    return "no cell is tagged check:" + name + "; there is " + (known.isEmpty() ? "none" : known);
  }

  /**
   * What the cells tagged {@code summary} say.
   *
   * @return plain text that ends with a line break, or nothing when no cell has that tag
   */
  public String summary() {
    return outcomes.stream()
        .filter(outcome -> outcome.cell().tags().contains(SUMMARY))
        .map(outcome -> outcome.plainText().stripTrailing() + "\n")
        .collect(Collectors.joining("\n"));
  }

  /**
   * The figures of the cells tagged {@code picture:NAME}.
   *
   * @return PNG files by name, in the order of the notebook
   */
  public Map<String, byte[]> pictures() {
    var pictures = new LinkedHashMap<String, byte[]>();
    for (var outcome : outcomes) {
      if (outcome.result().value().present()) {
        var png = outcome.result().value().shown().get(MimeBundle.PNG);
        outcome
            .cell()
            .picture()
            .ifPresent(
                name ->
                    png.ifPresent(
                        base64 -> pictures.put(name, Base64.getDecoder().decode(base64))));
      }
    }
    return pictures;
  }

  /**
   * The executed notebook.
   *
   * @return the text of a notebook file, nbformat 4.5
   */
  public String toNotebook() {
    return ExecutedCells.notebook(this, ExecutedCells.Timings.LEFT_OUT);
  }

  /**
   * The executed notebook with the time that each cell took, under {@code agro.seconds} in the
   * metadata of the cell. Unlike {@link #toNotebook} it differs from run to run.
   *
   * @return the text of a notebook file, nbformat 4.5
   */
  public String toTimedNotebook() {
    return ExecutedCells.notebook(this, ExecutedCells.Timings.WRITTEN);
  }

  /**
   * The notebook as a page that needs no other file, no script and no network.
   *
   * @param view whether the code is open or folded
   * @return an HTML document
   */
  public String toPage(CodeView view) {
    return new NotebookPage(this, Objects.requireNonNull(view, "view")).html();
  }
}
