package agro.notebook.run;

import agro.notebook.kernel.CellOutput;
import agro.notebook.kernel.CellResult;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A cell of code that has run.
 *
 * @param cell the cell
 * @param number its place among the cells of code, counted from 1
 * @param outputs what it printed and showed, in order, without the value of its last expression
 * @param result how it ended
 * @param time how long it took
 */
public record CellOutcome(
    NotebookCell cell, int number, List<CellOutput> outputs, CellResult result, Duration time) {

  /** The tag of cells that are expected to fail. */
  static final String MAY_FAIL = "raises-exception";

  /** Makes the list immutable. */
  public CellOutcome {
    Objects.requireNonNull(cell, "cell");
    Objects.requireNonNull(result, "result");
    Objects.requireNonNull(time, "time");
    outputs = List.copyOf(outputs);
  }

  /**
   * Whether the cell failed although its author did not say that it would.
   *
   * @return true when the run of the notebook ends here
   */
  public boolean stopsRun() {
    return !result.succeeded() && !cell.tags().contains(MAY_FAIL);
  }

  /**
   * What the cell printed to the standard output and showed, as plain text.
   *
   * @return the text, with a line break between its parts
   */
  public String plainText() {
    var text =
        outputs.stream()
            .filter(CellOutcome::isForReaders)
            .map(CellOutput::plainText)
            .map(part -> part.endsWith("\n") ? part : part + "\n")
            .collect(Collectors.joining());
    return text + (result.value().present() ? result.value().shown().plainText() : "");
  }

  private static boolean isForReaders(CellOutput output) {
    return !(output instanceof CellOutput.Printed printed) || printed.isOrdinary();
  }
}
