package agro.notebook.display;

import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Tables of records: a column for each component, a row for each record. */
final class RecordTables {

  private static final int ROWS = 40;
  private static final int LAST = 5;

  private RecordTables() {}

  /**
   * Whether values can be laid out as one table.
   *
   * @param values any values
   * @return true for at least one record, all of the same type with at least one component
   */
  static boolean areRecordsOfOneType(Collection<?> values) {
    var first = values.stream().findFirst().orElse(null);
    return first instanceof Record
        && first.getClass().getRecordComponents().length > 0
        && values.stream().allMatch(value -> value != null && value.getClass() == first.getClass());
  }

  /**
   * A table of records. Of more than 40 the first 35 and the last 5 are laid out; a note says so.
   *
   * @param records records of one type, at least one
   * @return the table, titled after the type
   */
  static ResultTable of(Collection<?> records) {
    var all = List.copyOf(records);
    var type = all.get(0).getClass();
    var components = type.getRecordComponents();
    var shown =
        all.size() <= ROWS
            ? all
            : Stream.concat(all.stream().limit(ROWS - LAST), all.stream().skip(all.size() - LAST))
                .toList();
    var cells = shown.stream().map(record -> row(record, components)).toList();
    var columns = Stream.of(components).map(part -> Column.of(words(part.getName()))).toList();
    var table =
        ResultTable.of(words(type.getSimpleName()), columns, PlainCells.evenDecimals(cells));
    return all.size() <= ROWS
        ? table
        : table.withNote("The first 35 and the last 5 of " + all.size() + " rows");
  }

  static ResultTable ofOne(Record value) {
    var components = value.getClass().getRecordComponents();
    var cells = row(value, components);
    var rows = new ArrayList<List<Cell>>();
    for (var index = 0; index < components.length; index++) {
      rows.add(List.of(Cell.text(words(components[index].getName())), cells.get(index)));
    }
    return ResultTable.of(
        words(value.getClass().getSimpleName()),
        List.of(Column.of("Part"), Column.of("Value")),
        rows);
  }

  static ResultTable ofMap(Map<?, ?> map) {
    var rows =
        map.entrySet().stream()
            .limit(ROWS)
            .map(entry -> List.of(PlainCells.of(entry.getKey()), PlainCells.of(entry.getValue())))
            .toList();
    var columns = List.of(Column.of("Key"), Column.of("Value"));
    var table = ResultTable.of(count(map.size()), columns, PlainCells.evenDecimals(rows));
    return map.size() <= ROWS
        ? table
        : table.withNote("The first " + ROWS + " of " + map.size() + " entries");
  }

  private static List<Cell> row(Object record, RecordComponent[] components) {
    return Stream.of(components)
        .map(component -> PlainCells.of(component(record, component)))
        .toList();
  }

  private static Object component(Object record, RecordComponent component) {
    try {
      var accessor = component.getAccessor();
      accessor.setAccessible(true);
      return accessor.invoke(record);
    } catch (ReflectiveOperationException | RuntimeException unreadable) {
      return "(could not be read)";
    }
  }

  private static String count(int entries) {
    return entries == 1 ? "1 entry" : entries + " entries";
  }

  /** A Java name in words: {@code meanCelsius} becomes "Mean celsius". */
  private static String words(String name) {
    var words = name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    return words.isEmpty()
        ? "Record"
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
