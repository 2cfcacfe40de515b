package agro.weather.log;

import agro.report.SourceLocation;
import java.util.List;
import java.util.Optional;

/**
 * The table inside the text of a log.
 *
 * @param name name of the log in messages
 * @param form how the text makes the table, nothing left open but the decimal mark
 * @param headings a different name for each column
 * @param below the line of units below the headings, empty cells where there is none
 * @param before lines before the headings
 * @param rows the lines of data; cut anew at each access when they come from a scan
 * @param cutOff whether the last row ends the file without the end of a line
 */
record RawTable(
    String name,
    TableForm form,
    List<String> headings,
    List<String> below,
    List<String> before,
    List<TableRow> rows,
    boolean cutOff) {

  SourceLocation file() {
    return SourceLocation.file(name);
  }

  SourceLocation location(TableRow row, int column) {
    return SourceLocation.line(name, row.line()).column(headings.get(column));
  }

  /** The place of a cell, by the index of its row. */
  SourceLocation location(int row, int column) {
    return SourceLocation.line(name, line(row)).column(headings.get(column));
  }

  /** Number of the line of a row. */
  int line(int row) {
    return rows instanceof ScannedRows scanned ? scanned.line(row) : rows.get(row).line();
  }

  /** The rows with their times and numbers, where a scan has taken them. */
  Optional<ScannedRows> scanned() {
    return rows instanceof ScannedRows scanned ? Optional.of(scanned) : Optional.empty();
  }

  /** Index of a heading, without regard to case; -1 where there is none. */
  int indexOf(String heading) {
    int exact = headings.indexOf(heading);
    for (int i = 0; exact < 0 && i < headings.size(); i++) {
      if (headings.get(i).equalsIgnoreCase(heading.strip())) {
        return i;
      }
    }
    return exact;
  }

  /** What stands below a heading in the line of units. */
  String below(int column) {
    return column < below.size() ? below.get(column) : "";
  }
}
