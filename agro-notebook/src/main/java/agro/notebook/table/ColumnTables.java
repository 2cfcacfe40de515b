package agro.notebook.table;

import agro.notebook.display.PlainCells;
import agro.working.Cell;
import agro.working.ResultTable;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.DateColumn;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.LongColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * Between our results and Tablesaw. The type of each column is known from our side; nothing is
 * guessed from text.
 */
public final class ColumnTables {

  private static final int FIRST_ROWS = 35;
  private static final int LAST_ROWS = 5;

  private ColumnTables() {}

  /**
   * A table of results as columns: numbers unrounded as doubles with NaN where a value is missing,
   * days as dates, everything else as text. Units stay in the names of the columns.
   *
   * @param table the results
   * @return a new table of the same title
   */
  public static Table of(ResultTable table) {
    var columns = new ArrayList<Column<?>>();
    for (var index = 0; index < table.columns().size(); index++) {
      var at = index;
      var cells = table.rows().stream().map(row -> row.get(at)).toList();
      columns.add(column(table.columns().get(index).heading(), cells));
    }
    return Table.create(table.title(), columns);
  }

  private static Column<?> column(String name, List<Cell> cells) {
    if (holdsOnly(cells, Cell.Figure.class)) {
      return DoubleColumn.create(name, cells.stream().mapToDouble(ColumnTables::number));
    }
    if (holdsOnly(cells, Cell.Day.class)) {
      return DateColumn.create(name, cells.stream().map(ColumnTables::day));
    }
    return StringColumn.create(
        name, cells.stream().map(cell -> isMissing(cell) ? "" : cell.printed()));
  }

  private static boolean holdsOnly(List<Cell> cells, Class<? extends Cell> type) {
    return cells.stream().anyMatch(type::isInstance)
        && cells.stream().allMatch(cell -> type.isInstance(cell) || isMissing(cell));
  }

  private static boolean isMissing(Cell cell) {
    return cell instanceof Cell.NotKnown;
  }

  private static double number(Cell cell) {
    return cell instanceof Cell.Figure figure ? figure.value() : Double.NaN;
  }

  private static LocalDate day(Cell cell) {
    return cell instanceof Cell.Day day ? day.value() : null;
  }

  /**
   * Records as columns, one for each component, in the type of the component: numbers, dates and
   * truth values as such, everything else as text.
   *
   * @param type the type of the records, which names the table
   * @param records the records, possibly none
   * @param <R> the type of the records
   * @return a new table
   */
  public static <R extends Record> Table ofRecords(Class<R> type, List<R> records) {
    var columns =
        Stream.of(type.getRecordComponents())
            .<Column<?>>map(component -> column(component, records))
            .toList();
    return Table.create(type.getSimpleName(), columns);
  }

  private static Column<?> column(RecordComponent component, List<? extends Record> records) {
    var name = component.getName();
    var type = component.getType();
    if (type == double.class || type == Double.class) {
      return filled(DoubleColumn.create(name), component, records, Double.class::cast);
    }
    if (type == int.class || type == Integer.class) {
      return filled(IntColumn.create(name), component, records, Integer.class::cast);
    }
    if (type == long.class || type == Long.class) {
      return filled(LongColumn.create(name), component, records, Long.class::cast);
    }
    if (type == boolean.class || type == Boolean.class) {
      return filled(BooleanColumn.create(name), component, records, Boolean.class::cast);
    }
    if (type == LocalDate.class) {
      return filled(DateColumn.create(name), component, records, LocalDate.class::cast);
    }
    return filled(StringColumn.create(name), component, records, String::valueOf);
  }

  private static <T, C extends Column<T>> C filled(
      C column,
      RecordComponent component,
      List<? extends Record> records,
      Function<Object, T> typed) {
    for (var record : records) {
      var value = value(record, component);
      if (value == null) {
        column.appendMissing();
      } else {
        column.append(typed.apply(value));
      }
    }
    return column;
  }

  private static Object value(Record record, RecordComponent component) {
    try {
      var accessor = component.getAccessor();
      accessor.setAccessible(true);
      return accessor.invoke(record);
    } catch (ReflectiveOperationException unreadable) {
      throw new IllegalArgumentException(
          component.getName() + " of " + record.getClass().getSimpleName() + " cannot be read",
          unreadable);
    }
  }

  /**
   * A Tablesaw table as a table of results. Of more than 40 rows the first 35 and the last 5 are
   * laid out; a note says so.
   *
   * @param table any table with at least one column
   * @return the table of results; a missing value prints as "not known"
   */
  public static ResultTable toResult(Table table) {
    var size = table.rowCount();
    var cut = size > FIRST_ROWS + LAST_ROWS;
    var rows =
        IntStream.range(0, size)
            .filter(row -> !cut || row < FIRST_ROWS || row >= size - LAST_ROWS)
            .mapToObj(row -> table.columns().stream().map(column -> cell(column, row)).toList())
            .toList();
    var columns =
        table.columns().stream().map(column -> ResultTable.Column.of(column.name())).toList();
    var title = table.name() == null || table.name().isBlank() ? "Table" : table.name();
    var result = ResultTable.of(title, columns, PlainCells.evenDecimals(rows));
    return cut
        ? result.withNote(
            "The first " + FIRST_ROWS + " and the last " + LAST_ROWS + " of " + size + " rows")
        : result;
  }

  private static Cell cell(Column<?> column, int row) {
    return column.isMissing(row) ? Cell.notKnown() : PlainCells.of(column.get(row));
  }
}
