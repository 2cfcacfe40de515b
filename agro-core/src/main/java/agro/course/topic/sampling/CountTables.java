package agro.course.topic.sampling;

import agro.working.Block;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/** Counts as tables that lie on their side, so that a dozen plants take one line. */
final class CountTables {

  private CountTables() {}

  /** Numbers from first upwards as headings, and one whole number below each. */
  static Block row(String title, String heading, int first, String below, List<Double> numbers) {
    var columns = new ArrayList<Column>();
    var cells = new ArrayList<Cell>();
    columns.add(Column.of(heading));
    cells.add(Cell.text(below));
    for (int i = 0; i < numbers.size(); i++) {
      columns.add(Column.of(Integer.toString(first + i)));
      cells.add(Cell.number(numbers.get(i), 0));
    }
    return new Block.TableBlock(ResultTable.of(title, columns, List.of(cells)));
  }
}
