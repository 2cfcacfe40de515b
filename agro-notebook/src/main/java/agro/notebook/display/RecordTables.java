package agro.notebook.display;

import agro.working.Cell;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Tables of records, maps and rows of values. */
final class RecordTables {

  private static final int FIRST = 35;
  private static final int LAST = 5;
  private static final int MOST_COLUMNS = 20;
  private static final int LAST_COLUMNS = 5;
  private static final int CELL_CHARACTERS = 300;

  private RecordTables() {}

  /**
   * As much of a collection as tables and texts of it need.
   *
   * @param values any values
   * @return the first and the last ones
   */
  static Sample sample(Collection<?> values) {
    return Sample.of(values, FIRST, LAST);
  }

  /**
   * As much of a map as tables and texts of it need.
   *
   * @param map any map
   * @return its first entries
   */
  static Sample sample(Map<?, ?> map) {
    return Sample.of(map.entrySet(), FIRST + LAST, 0);
  }

  /**
   * Values as one table, when they are records, maps with words as keys, or rows of values. Of many
   * only the first and the last are laid out; a note says so.
   *
   * @param sample the values
   * @return the table, or empty when the values are something else
   */
  static Optional<DataTable> of(Sample sample) {
    if (sample.trouble() != null || sample.first().isEmpty()) {
      return Optional.empty();
    }
    return ofRecords(sample)
        .or(() -> ofMaps(sample))
        .or(() -> ofRows(sample))
        .map(table -> noted(table, sample, "rows"));
  }

  private static DataTable noted(DataTable table, Sample sample, String what) {
    if (sample.complete()) {
      return table;
    }
    var last = sample.last().size();
    return table.withNote(
        "The first "
            + sample.first().size()
            + (last > 0 ? " and the last " + last : "")
            + " of "
            + (sample.size() > sample.all().size() ? sample.size() : "more")
            + " "
            + what);
  }

  private static Optional<DataTable> ofRecords(Sample sample) {
    var types = new LinkedHashSet<Class<?>>();
    for (var value : sample.all()) {
      if (!(value instanceof Record record) || !isLaidOut(record)) {
        return Optional.empty();
      }
      types.add(value.getClass());
    }
    var rows = new ArrayList<Map<String, Object>>();
    for (var value : sample.all()) {
      var parts = new LinkedHashMap<String, Object>();
      if (types.size() > 1) {
        parts.put("type", value.getClass().getSimpleName());
      }
      parts.putAll(RecordParts.of((Record) value));
      rows.add(parts);
    }
    var caption =
        types.stream()
            .map(type -> RecordParts.words(type.getSimpleName()))
            .collect(Collectors.joining(", "));
    return Optional.of(union(caption, rows, true));
  }

  private static boolean isLaidOut(Record value) {
    return value.getClass().getRecordComponents().length > 0;
  }

  private static Optional<DataTable> ofMaps(Sample sample) {
    var rows = new ArrayList<Map<String, Object>>();
    for (var value : sample.all()) {
      if (!(value instanceof Map<?, ?> map) || map.isEmpty()) {
        return Optional.empty();
      }
      var row = new LinkedHashMap<String, Object>();
      for (var entry : Sample.of(map.entrySet(), MOST_COLUMNS, 0).first()) {
        if (!(entry instanceof Map.Entry<?, ?> pair) || !(pair.getKey() instanceof CharSequence)) {
          return Optional.empty();
        }
        row.put(pair.getKey().toString(), pair.getValue());
      }
      rows.add(row);
    }
    return Optional.of(union(count(rows.size(), "map"), rows, false));
  }

  /** A column for each name that occurs, in the order in which names come first. */
  private static DataTable union(String caption, List<Map<String, Object>> rows, boolean words) {
    Set<String> names = new LinkedHashSet<>();
    rows.forEach(row -> names.addAll(row.keySet()));
    var all = List.copyOf(names);
    var shown = columns(all.size());
    var cells =
        rows.stream()
            .map(
                row -> shown.stream().map(at -> at < 0 ? gap() : cellOf(row, all.get(at))).toList())
            .toList();
    var headings =
        shown.stream()
            .map(at -> at < 0 ? "…" : words ? RecordParts.words(all.get(at)) : all.get(at))
            .toList();
    return cutNoted(DataTable.of(caption, headings, cells), all.size());
  }

  private static Optional<DataTable> ofRows(Sample sample) {
    var rows = new ArrayList<List<Object>>();
    var widest = 0;
    for (var value : sample.all()) {
      List<Object> row =
          value == null
              ? null
              : value.getClass().isArray()
                  ? PlainWriter.elements(value)
                  : value instanceof List<?> list ? new ArrayList<>(list) : null;
      if (row == null || holdsContainers(value, row)) {
        return Optional.empty();
      }
      rows.add(row);
      widest = Math.max(widest, row.size());
    }
    if (rows.size() < 2 || widest < 2) {
      return Optional.empty();
    }
    return Optional.of(numbered(sample, rows, widest));
  }

  private static boolean holdsContainers(Object array, List<Object> row) {
    var type = array.getClass().getComponentType();
    return (type == null || !type.isPrimitive())
        && row.stream().anyMatch(RecordTables::isContainer);
  }

  private static boolean isContainer(Object value) {
    return value != null
        && (value.getClass().isArray()
            || value instanceof Collection<?>
            || value instanceof Map<?, ?>
            || value instanceof Record);
  }

  private static DataTable numbered(Sample sample, List<List<Object>> rows, int width) {
    var shown = columns(width);
    var cells = new ArrayList<List<Cell>>();
    for (var at = 0; at < rows.size(); at++) {
      var row = rows.get(at);
      var head = sample.first().size();
      var number = at < head ? at : sample.size() - rows.size() + at;
      var line = new ArrayList<Cell>();
      line.add(Cell.text(String.valueOf(number)));
      shown.forEach(
          column ->
              line.add(
                  column < 0 || column >= row.size()
                      ? (column < 0 ? gap() : Cell.text(""))
                      : cell(row.get(column))));
      cells.add(line);
    }
    var headings = new ArrayList<>(List.of("Row"));
    shown.forEach(column -> headings.add(column < 0 ? "…" : String.valueOf(column)));
    var caption = count(sample.size(), "row") + " of " + count(width, "value");
    return cutNoted(DataTable.of(caption, headings, cells).withNamedRows(), width);
  }

  /** The places of the columns that are shown; -1 stands for those between them. */
  private static List<Integer> columns(int all) {
    if (all <= MOST_COLUMNS) {
      return IntStream.range(0, all).boxed().toList();
    }
    var shown = new ArrayList<Integer>();
    IntStream.range(0, MOST_COLUMNS - LAST_COLUMNS).forEach(shown::add);
    shown.add(-1);
    IntStream.range(all - LAST_COLUMNS, all).forEach(shown::add);
    return shown;
  }

  private static DataTable cutNoted(DataTable table, int columns) {
    return columns <= MOST_COLUMNS
        ? table
        : table.withNote(
            "The first "
                + (MOST_COLUMNS - LAST_COLUMNS)
                + " and the last "
                + LAST_COLUMNS
                + " of "
                + columns
                + " columns");
  }

  static DataTable ofOne(Record value) {
    var rows = new ArrayList<List<Cell>>();
    RecordParts.of(value)
        .forEach((name, part) -> rows.add(List.of(Cell.text(RecordParts.words(name)), cell(part))));
    return DataTable.of(
            RecordParts.words(value.getClass().getSimpleName()), List.of("Part", "Value"), rows)
        .withNamedRows();
  }

  /** A map with a row for each entry; values that are records have a column for each component. */
  static Optional<DataTable> ofMap(Sample sample) {
    if (sample.trouble() != null || sample.first().isEmpty()) {
      return Optional.empty();
    }
    var records = sample.first().stream().map(entry -> ((Map.Entry<?, ?>) entry).getValue());
    var spread = records.allMatch(value -> value instanceof Record record && isLaidOut(record));
    var rows = new ArrayList<Map<String, Object>>();
    for (var entry : sample.first()) {
      var pair = (Map.Entry<?, ?>) entry;
      var row = new LinkedHashMap<String, Object>();
      row.put("key", pair.getKey());
      if (spread) {
        RecordParts.of((Record) pair.getValue())
            .forEach((name, value) -> row.put(name.equals("key") ? "its key" : name, value));
      } else {
        row.put("value", pair.getValue());
      }
      rows.add(row);
    }
    var table = union(count(sample.size(), "entry"), rows, true).withNamedRows();
    return Optional.of(noted(table, sample, "entries"));
  }

  /** A name that this row does not have leaves its cell empty; one without a value is missing. */
  private static Cell cellOf(Map<String, Object> row, String name) {
    return row.containsKey(name) ? cell(row.get(name)) : Cell.text("");
  }

  private static Cell cell(Object value) {
    var cell = PlainCells.of(value);
    return cell instanceof Cell.Text text && text.value().length() > CELL_CHARACTERS
        ? Cell.text(PlainText.head(text.value(), CELL_CHARACTERS) + "…")
        : cell;
  }

  private static Cell gap() {
    return Cell.text("…");
  }

  private static String count(int number, String what) {
    return number == 1
        ? "1 " + what
        : number
            + " "
            + (what.endsWith("y") ? what.substring(0, what.length() - 1) + "ies" : what + "s");
  }
}
