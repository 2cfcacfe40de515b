package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The short way from the bytes of a long log, of which not everything is declared, to its table.
 * How the lines are written is found from the first of them; all of them are then scanned as bytes,
 * and the table is found again from the lines that the general way would have looked at. Table and
 * report are those of the general way, which every file goes that is not as plain as this asks for:
 * one character between the cells, times of one fixed width, and below the headings nothing but
 * lines with as many cells as the first.
 */
final class TableScan {

  private static final int HEAD_LINES = 60;
  private static final int MOST_HEAD_BYTES = 100_000;

  /** Date, hour and minute in the shortest way. */
  private static final int LEAST_TIME_LENGTH = 16;

  private final byte[] bytes;
  private final String name;
  private final LogFormat declared;
  private final ReadReport.Collector report;

  private TableScan(byte[] bytes, String name, LogFormat declared) {
    this.bytes = bytes;
    this.name = name;
    this.declared = declared;
    report = new ReadReport.Collector(name);
  }

  /**
   * Finds the table, with rows that are {@link ScannedRows}.
   *
   * @param bytes the file
   * @param name its name
   * @param declared what is known about it
   * @param report hears what was found, if the table was
   * @return the table; nothing when the file has to go the general way
   */
  static Optional<RawTable> find(
      byte[] bytes, String name, LogFormat declared, ReadReport.Collector report) {
    var scan = new TableScan(bytes, name, declared);
    try {
      var table = scan.find();
      table.ifPresent(found -> report.addAll(scan.report.report()));
      return table;
    } catch (InputProblem toldByTheGeneralWay) {
      return Optional.empty();
    }
  }

  private Optional<RawTable> find() {
    int headEnd = headEnd();
    if (headEnd > MOST_HEAD_BYTES) {
      return Optional.empty();
    }
    var head = Arrays.copyOf(bytes, headEnd);
    var text = DecodedText.of(head, name, declared.table().charset(), report).requireText(name);
    if (!ScannedLog.LIKE_ASCII.contains(text.charset())) {
      return Optional.empty();
    }
    var form = declared.table().withCharset(text.charset());
    var found = TableFinding.find(name, text.text(), form, new ReadReport.Collector(name));
    var layout = layout(found);
    var time = layout.flatMap(known -> time(found.rows().get(0).cell(known.timeCell())));
    if (time.isEmpty()) {
      return Optional.empty();
    }
    var rows = rows(found, layout.get(), time.get());
    return rows.flatMap(scanned -> table(text.text(), form, found, layout.get(), scanned));
  }

  /** The byte behind the first lines. */
  private int headEnd() {
    int lines = 0;
    int at = 0;
    while (at < bytes.length && at <= MOST_HEAD_BYTES && lines < HEAD_LINES) {
      lines += bytes[at] == '\n' ? 1 : 0;
      at++;
    }
    return at;
  }

  /** How the lines of the head are written; nothing when not one time and one temperature. */
  private Optional<ReadingScan.Layout> layout(RawTable head) {
    var content = new ColumnContent(head);
    var untold = new ReadReport.Collector(name);
    var times =
        declared.columns().isPresent()
            ? declared.columns().get().times()
            : new TimeRoles(head, content, untold).find(declared.times().serialDays().isPresent());
    int time = times.size() == 1 ? head.indexOf(times.get(0).name()) : -1;
    int value = head.indexOf(temperature(head, content, times));
    var separator = head.form().separator().orElseThrow();
    boolean isPlain =
        time >= 0
            && times.get(0).part() == TimePart.DATE_TIME
            && value >= 0
            && value != time
            && separator.isOneCharacter()
            && declared.times().pattern().isEmpty();
    return isPlain
        ? Optional.of(
            new ReadingScan.Layout(
                separator.character(),
                mark(head, value),
                head.rows().get(0).cells().size(),
                time,
                value))
        : Optional.empty();
  }

  private String temperature(RawTable head, ColumnContent content, List<TimePartColumn> times) {
    if (declared.columns().isPresent()) {
      return declared.columns().get() instanceof LogColumns.Readings readings
          ? readings.temperatureColumn()
          : "";
    }
    var sensors = new ValueRoles(head, content, times, new ReadReport.Collector(name)).readings();
    var sensor = sensors.keySet().iterator().next();
    if (declared.sensor().isPresent()) {
      sensor = ValueRoles.chosen(sensors, declared.sensor().get(), head);
    } else if (sensors.size() > 1) {
      return "";
    }
    return ((LogColumns.Readings) sensors.get(sensor)).temperatureColumn();
  }

  /** The decimal mark of the first number that has one. */
  private char mark(RawTable head, int column) {
    if (declared.table().decimalMark().isPresent()) {
      return declared.table().decimalMark().get().character();
    }
    for (var row : head.rows()) {
      var number = NumberCell.of(row.cell(column));
      if (number.isPresent() && number.get().mark() != 0) {
        return number.get().mark();
      }
    }
    return '.';
  }

  private static Optional<FixedTime> time(String cell) {
    return FixedTime.ofIso(cell).filter(time -> cell.length() >= LEAST_TIME_LENGTH);
  }

  /** All lines from the first row on; nothing when one of them is no row. */
  private Optional<ScannedRows> rows(RawTable head, ReadingScan.Layout layout, FixedTime time) {
    int firstLine = head.rows().get(0).line();
    int from = lineStart(firstLine);
    var separator = head.form().separator().orElseThrow();
    var odd = new DetectedLine(bytes, layout, separator, time, declared.missing());
    var codes = declared.missingCodes();
    var scan = ReadingScan.of(bytes, from, firstLine, layout, time, codes, odd);
    int rows = scan.rows();
    boolean isWhole =
        scan.firstOddLine().isEmpty()
            && rows > 0
            && scan.line(0) == firstLine
            && scan.line(rows - 1) == firstLine + rows - 1
            && isLastLine(scan.start(rows - 1));
    var all = new ScannedRows(bytes, scan, layout, separator, odd);
    return isWhole && (layout.timeCell() == 0 || hasNoComment(scan))
        ? Optional.of(all)
        : Optional.empty();
  }

  private int lineStart(int line) {
    int at = 0;
    for (int number = 1; number < line; at++) {
      boolean two = bytes[at] == '\r' && at + 1 < bytes.length && bytes[at + 1] == '\n';
      number += bytes[at] == '\n' || (bytes[at] == '\r' && !two) ? 1 : 0;
    }
    return at;
  }

  private boolean isLastLine(int from) {
    int at = from;
    while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
      at++;
    }
    int rest = bytes.length - at;
    return rest <= 1 || (rest == 2 && bytes[at] == '\r');
  }

  /** Whether each line begins with a letter or a digit, so that it can be no comment. */
  private boolean hasNoComment(ReadingScan scan) {
    for (int row = 0; row < scan.rows(); row++) {
      if (!Character.isLetterOrDigit(bytes[scan.start(row)])) {
        return false;
      }
    }
    return true;
  }

  /** The table as the general way finds it, from the lines that count for it. */
  private Optional<RawTable> table(
      String headText,
      TableForm form,
      RawTable found,
      ReadingScan.Layout layout,
      ScannedRows rows) {
    var headLines = QuotedLines.joined(TextLine.of(headText));
    var above = new ArrayList<>(headLines);
    above.removeIf(line -> line.number() >= rows.line(0));
    var cut = SeparatorEvidence.findAmong(full(above, rows), form, name);
    boolean isAlike =
        cut.separator() == found.form().separator().orElseThrow()
            && cut.width() == layout.cells()
            && cut.dateColumn() == layout.timeCell();
    if (!isAlike) {
      return Optional.empty();
    }
    var table = TableFinding.find(name, headLines, cut, form, report);
    boolean isSame =
        table.rows().get(0).line() == rows.line(0)
            && table.rows().size() == headLines.size() - above.size()
            && table.headings().equals(found.headings())
            && WrittenTime.of(table.headings().get(layout.timeCell())).isEmpty();
    return isSame
        ? Optional.of(
            new RawTable(
                name,
                table.form(),
                table.headings(),
                table.below(),
                table.before(),
                rows,
                bytes[bytes.length - 1] != '\n' && bytes[bytes.length - 1] != '\r'))
        : Optional.empty();
  }

  /** The lines that hold something and are no comments. */
  private static List<String> full(List<TextLine> above, ScannedRows rows) {
    var first = SeparatorEvidence.full(above);
    return new AbstractList<>() {
      @Override
      public String get(int index) {
        return index < first.size() ? first.get(index) : rows.text(index - first.size());
      }

      @Override
      public int size() {
        return first.size() + rows.size();
      }
    };
  }
}
