package agro.dose.scaling;

import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.ArrayList;
import java.util.List;

/** Figures for the treated ground and for the field beside one another. */
final class SideBySide {

  private final String title;
  private final List<List<Cell>> rows = new ArrayList<>();

  SideBySide(String title) {
    this.title = title;
  }

  SideBySide row(String what, String treated, String field) {
    rows.add(List.of(Cell.text(what), Cell.text(treated), Cell.text(field)));
    return this;
  }

  /** The table. */
  ResultTable table() {
    var columns =
        List.of(
            ResultTable.Column.of("What"),
            ResultTable.Column.of("On treated ground"),
            ResultTable.Column.of("On the field"));
    return ResultTable.of(title, columns, rows);
  }

  /** Findings, the table and the steps. */
  static Presentation presentation(ScalingResult result, ResultTable table) {
    var builder = Presentation.titled("");
    result.findings().forEach(finding -> builder.paragraph(finding.toString()));
    return builder.table(table).working(result.working()).build();
  }
}
