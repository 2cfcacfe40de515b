package agro.weather.log;

import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The rows of a table whose lines a scan has taken one after the other. Times and temperatures are
 * at hand as numbers; cells are cut from the bytes of the file whenever a row is asked for.
 */
final class ScannedRows extends AbstractList<TableRow> {

  private static final int SECONDS_OF_DAY = 86_400;

  private final byte[] bytes;
  private final ReadingScan scan;
  private final ReadingScan.Layout layout;
  private final CellSeparator separator;
  private final DetectedLine oddLine;

  ScannedRows(
      byte[] bytes,
      ReadingScan scan,
      ReadingScan.Layout layout,
      CellSeparator separator,
      DetectedLine oddLine) {
    this.bytes = bytes;
    this.scan = scan;
    this.layout = layout;
    this.separator = separator;
    this.oddLine = oddLine;
  }

  @Override
  public TableRow get(int row) {
    return new TableRow(line(row), separator.split(text(row), List.of()));
  }

  @Override
  public int size() {
    return scan.rows();
  }

  int line(int row) {
    return scan.line(row);
  }

  /** The line of a row as it stands in the file, which is ASCII there. */
  String text(int row) {
    int from = scan.start(row);
    int end = from;
    while (end < bytes.length && bytes[end] != '\n' && bytes[end] != '\r') {
      end++;
    }
    return new String(bytes, from, end - from, StandardCharsets.US_ASCII);
  }

  /** The times, when the scan has read them from the columns in question and nothing is odd. */
  Optional<LogTimes> times(RawTable table, List<TimePartColumn> columns, TimeForm form) {
    boolean isScanned =
        columns.size() == 1
            && columns.get(0).part() == TimePart.DATE_TIME
            && table.indexOf(columns.get(0).name()) == layout.timeCell()
            && form.pattern().isEmpty();
    if (!isScanned) {
      return Optional.empty();
    }
    var local = scan.localSeconds();
    long first = Long.MAX_VALUE;
    long last = Long.MIN_VALUE;
    for (long second : local) {
      first = Math.min(first, second);
      last = Math.max(last, second);
    }
    var offsets = new long[scan.hasOffsets() ? local.length : 0];
    for (int i = 0; i < offsets.length; i++) {
      offsets[i] = scan.offset(i);
    }
    if (!isUsual(first) || !isUsual(last)) {
      return Optional.empty();
    }
    return Optional.of(
        new LogTimes(table, layout.timeCell(), local, offsets, true, Optional.empty()));
  }

  /** A time at the very end of the last day counts as the day after it, and is looked at closer. */
  private static boolean isUsual(long local) {
    return WrittenTime.isUsualDay(Math.floorDiv(local, SECONDS_OF_DAY));
  }

  /** The numbers, when the scan has read them from that column with that decimal mark. */
  Optional<NumberColumn> numbers(int column, DecimalMark mark) {
    boolean hasMark = scan.hasMark() || hasOddMark();
    if (column != layout.valueCell() || (hasMark && mark.character() != layout.decimalMark())) {
      return Optional.empty();
    }
    var numbers = NumberColumn.of(size(), scan.values(), scan.decimals());
    int firstLine = line(0);
    oddLine.numbers().forEach((line, cell) -> numbers.put(line - firstLine, cell));
    return Optional.of(numbers);
  }

  private boolean hasOddMark() {
    return oddLine.numbers().values().stream().anyMatch(cell -> cell.mark() != 0);
  }

  /** The decimal mark that the numbers have, when the scan has read them all. */
  Optional<DecimalMark> onlyMark(int[] columns) {
    if (columns.length != 1 || columns[0] != layout.valueCell()) {
      return Optional.empty();
    }
    boolean comma = layout.decimalMark() == ',' && (scan.hasMark() || hasOddMark());
    return Optional.of(comma ? DecimalMark.COMMA : DecimalMark.POINT);
  }

  /** What stood for a missing value besides empty cells, as written. */
  Set<String> missingWords() {
    return oddLine.missingWords();
  }
}
