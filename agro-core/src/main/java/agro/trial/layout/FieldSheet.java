package agro.trial.layout;

import agro.reading.SafeFile;
import agro.report.InputProblem;
import agro.trial.TrialPlot;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Sheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;

/**
 * The sheet to take outdoors: plots in the order of walking with columns to fill, as pages to print
 * and as a file that is read as a plot table once it is filled.
 */
public final class FieldSheet {

  private static final int MOST_VARIABLES = 8;

  /** Headings of columns that the sheet has by itself. */
  private static final List<String> RESERVED =
      List.of(
          "plot",
          "block",
          "main plot",
          "row",
          "column",
          "treatment",
          "code",
          "plant",
          "date",
          "who",
          "remarks");

  private final TrialLayout layout;
  private final int subSamples;
  private final List<String> variables;

  private FieldSheet(TrialLayout layout, int subSamples, List<String> variables) {
    this.layout = layout;
    this.subSamples = subSamples;
    this.variables = variables;
  }

  static FieldSheet of(TrialLayout layout, int subSamples, List<String> variables) {
    if (subSamples < 1) {
      throw new IllegalArgumentException(
          "each plot needs at least one line, but got " + subSamples + " sub-samples");
    }
    var taken = RESERVED.stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
    boolean named =
        variables.stream()
            .noneMatch(name -> name.isBlank() || taken.contains(name.toLowerCase(Locale.ROOT)));
    if (variables.isEmpty()
        || variables.size() > MOST_VARIABLES
        || !named
        || new HashSet<>(variables).size() < variables.size()) {
      throw InputProblem.of("the columns to fill " + variables)
          .expected("1 to " + MOST_VARIABLES + " different names, none of " + RESERVED)
          .because("each variable gets a column that one can write in")
          .mend("name what is assessed, or print two sheets");
    }
    return new FieldSheet(layout, subSamples, variables);
  }

  /**
   * The pages.
   *
   * @return upright pages of A4
   */
  public List<Sheet> pages() {
    return new FieldSheetPages(layout, subSamples, variables).draw();
  }

  /**
   * All pages as one web page that prints page by page.
   *
   * @return an HTML file that needs no other
   */
  public String toHtml() {
    return SheetPages.html("Field sheet of " + layout.plan().name(), pages());
  }

  /**
   * The sheet as a file to fill, with design and seed in lines that begin with #. Treatments stand
   * in it as far as the blinding allows; {@link agro.trial.FieldTrial#withPlotsOf} puts them back.
   *
   * @return a comma-separated file
   */
  public String toCsv() {
    boolean open = layout.plan().blinding() == Blinding.OPEN;
    var factors =
        open
            ? layout.plan().factors().stream().map(TreatmentFactor::name).toList()
            : List.of(TrialPlot.TREATMENT);
    var columns = LayoutTables.placeColumns(layout);
    factors.forEach(factor -> columns.add(ResultTable.Column.of(factor)));
    columns.add(ResultTable.Column.of("date"));
    if (subSamples > 1) {
      columns.add(ResultTable.Column.of("plant"));
    }
    columns.add(ResultTable.Column.of("who"));
    variables.forEach(variable -> columns.add(ResultTable.Column.of(variable)));
    var rows = new ArrayList<List<Cell>>();
    for (var plot : layout.plots()) {
      for (int plant = 1; plant <= subSamples; plant++) {
        rows.add(row(plot, plant, open, factors));
      }
    }
    return LayoutTables.heading(layout)
        + ResultTable.of("Field sheet of " + layout.plan().name(), columns, rows).toCsv();
  }

  private List<Cell> row(TrialPlot plot, int plant, boolean open, List<String> factors) {
    var cells = LayoutTables.placeCells(layout, plot);
    if (open) {
      factors.forEach(factor -> cells.add(Cell.text(plot.level(factor).orElseThrow())));
    } else {
      var told = layout.told(plot);
      cells.add(Cell.text(told.isEmpty() ? "hidden" : told));
    }
    cells.add(Cell.notKnown());
    if (subSamples > 1) {
      cells.add(Cell.number(plant, 0));
    }
    cells.add(Cell.notKnown());
    variables.forEach(variable -> cells.add(Cell.notKnown()));
    return cells;
  }

  /**
   * Writes the printed form to a file, whole or not at all.
   *
   * @param file the file
   */
  public void writeHtml(Path file) {
    SafeFile.writeText(file, toHtml());
  }

  @Override
  public String toString() {
    return "field sheet of " + layout.plan().name() + " with " + variables;
  }
}
