package agro.trial.layout;

import agro.trial.NaturalOrder;
import agro.trial.TrialPlot;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import java.util.ArrayList;
import java.util.List;

/** The tables and files of a layout. */
final class LayoutTables {

  private LayoutTables() {}

  static ResultTable full(TrialLayout layout) {
    var factors = layout.plan().factors().stream().map(TreatmentFactor::name).toList();
    var columns = placeColumns(layout);
    factors.forEach(factor -> columns.add(ResultTable.Column.of(factor)));
    columns.add(ResultTable.Column.of("area"));
    var rows = new ArrayList<List<Cell>>();
    for (var plot : layout.plots()) {
      var cells = placeCells(layout, plot);
      factors.forEach(factor -> cells.add(Cell.text(plot.level(factor).orElseThrow())));
      cells.add(Cell.number(plot.area().orElseThrow().inBaseUnit(), 2));
      rows.add(cells);
    }
    return ResultTable.of("Plots of " + layout.plan().name(), columns, rows)
        .withNote("Area in m².");
  }

  static List<ResultTable.Column> placeColumns(TrialLayout layout) {
    var names = new ArrayList<String>();
    names.add("plot");
    if (hasBlocks(layout)) {
      names.add("block");
    }
    if (hasMainPlots(layout)) {
      names.add("main plot");
    }
    names.add("row");
    names.add("column");
    return new ArrayList<>(names.stream().map(ResultTable.Column::of).toList());
  }

  private static boolean hasBlocks(TrialLayout layout) {
    return layout.plots().stream().anyMatch(plot -> !plot.block().isEmpty());
  }

  private static boolean hasMainPlots(TrialLayout layout) {
    return layout.plots().stream().anyMatch(plot -> !plot.mainPlot().isEmpty());
  }

  static List<Cell> placeCells(TrialLayout layout, TrialPlot plot) {
    var cells = new ArrayList<Cell>();
    var place = plot.place().orElseThrow();
    cells.add(Cell.text(plot.name()));
    if (hasBlocks(layout)) {
      cells.add(Cell.text(plot.block()));
    }
    if (hasMainPlots(layout)) {
      cells.add(Cell.text(plot.mainPlot()));
    }
    cells.add(Cell.number(place.row(), 0));
    cells.add(Cell.number(place.column(), 0));
    return cells;
  }

  static ResultTable key(TrialLayout layout) {
    var columns =
        List.of(
            ResultTable.Column.of("code"),
            ResultTable.Column.of("treatment"),
            ResultTable.Column.of("plots"));
    var rows = new ArrayList<List<Cell>>();
    for (var treatment : layout.plan().treatments()) {
      var plots =
          layout.plots().stream()
              .filter(plot -> plot.treatment().equals(treatment))
              .map(TrialPlot::name)
              .sorted(NaturalOrder.ofNames())
              .toList();
      rows.add(
          List.of(
              Cell.text(layout.codeOf(treatment)),
              Cell.text(treatment),
              Cell.text(String.join(", ", plots))));
    }
    return ResultTable.of("Key of " + layout.plan().name(), columns, rows);
  }

  /** Lines that say where a file comes from; readers of files skip them. */
  static String heading(TrialLayout layout) {
    var ground = layout.plan().ground();
    var lines =
        List.of(
            layout.plan().name(),
            "design: " + layout.plan().design().words(),
            "seed: " + layout.seed(),
            "numbering: " + layout.plan().numbering().words(),
            "size of a plot: "
                + Numbers.plain(ground.plotWidth().inBaseUnit())
                + " m by "
                + Numbers.plain(ground.plotLength().inBaseUnit())
                + " m; areas in m²",
            "rows are counted from the " + ground.top().words() + " edge");
    var text = new StringBuilder();
    lines.forEach(
        line -> text.append("# ").append(line.replaceAll("\\s+", " ").trim()).append("\r\n"));
    return text.toString();
  }
}
