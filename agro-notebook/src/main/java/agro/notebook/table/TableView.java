package agro.notebook.table;

import agro.notebook.display.DataTable;
import agro.notebook.display.DataTable.Heading;
import agro.notebook.display.PlainCells;
import agro.working.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.columns.Column;

/**
 * What a reader sees of Tablesaw columns side by side: the first and the last rows, the first and
 * the last columns of very many, and their types.
 */
final class TableView {

  private static final int FIRST_ROWS = 35;
  private static final int LAST_ROWS = 5;
  private static final int FIRST_COLUMNS = 15;
  private static final int LAST_COLUMNS = 5;

  private TableView() {}

  /**
   * Lays columns out.
   *
   * @param caption what they show
   * @param columns at least one column, all of the same length
   * @return the table, with a note on its size
   */
  static DataTable of(String caption, List<? extends Column<?>> columns) {
    var size = columns.get(0).size();
    var rows = ends(size, FIRST_ROWS, LAST_ROWS);
    var shown = ends(columns.size(), FIRST_COLUMNS, LAST_COLUMNS);
    var cells =
        rows.stream()
            .map(row -> shown.stream().map(at -> cell(columns.get(at), row)).toList())
            .toList();
    var headings = shown.stream().map(at -> heading(columns.get(at))).toList();
    var even = new ArrayList<List<Cell>>(PlainCells.evenDecimals(cells));
    if (shown.size() < columns.size()) {
      headings = withGap(headings, new Heading("…", "", false));
      even.replaceAll(row -> withGap(row, Cell.text("…")));
    }
    return new DataTable(
        caption, headings, even, false, notes(size, columns.size(), rows, shown.size()));
  }

  private static <T> List<T> withGap(List<T> ends, T gap) {
    var all = new ArrayList<>(ends);
    all.add(FIRST_COLUMNS, gap);
    return all;
  }

  private static List<Integer> ends(int all, int first, int last) {
    var cut = all > first + last;
    return IntStream.concat(
            IntStream.range(0, cut ? first : all), IntStream.range(cut ? all - last : all, all))
        .boxed()
        .toList();
  }

  private static List<String> notes(int rows, int columns, List<Integer> shown, int shownColumns) {
    var notes = new ArrayList<String>();
    notes.add(
        shown.size() < rows
            ? "The first " + FIRST_ROWS + " and the last " + LAST_ROWS + " of " + rows + " rows"
            : rows == 1 ? "1 row" : rows + " rows");
    if (shownColumns < columns) {
      notes.add(
          "The first "
              + FIRST_COLUMNS
              + " and the last "
              + LAST_COLUMNS
              + " of "
              + columns
              + " columns");
    }
    return notes;
  }

  private static Heading heading(Column<?> column) {
    return new Heading(
        column.name(),
        column.type().name().toLowerCase(Locale.ROOT).replace('_', ' '),
        column instanceof NumericColumn<?> && column.type() != ColumnType.BOOLEAN);
  }

  private static Cell cell(Column<?> column, int row) {
    return column.isMissing(row) ? Cell.notKnown() : PlainCells.of(column.get(row));
  }
}
