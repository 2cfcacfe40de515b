package agro.weather.log;

import java.util.List;

/**
 * A line of a table, cut into cells.
 *
 * @param line number of the line, counted from 1
 * @param cells trimmed cells
 */
record TableRow(int line, List<String> cells) {

  /** A cell, empty beyond the end of the line. */
  String cell(int index) {
    return index < cells.size() ? cells.get(index) : "";
  }

  boolean isEmpty() {
    for (var cell : cells) {
      if (!cell.isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** Number of cells without empty ones at the end. */
  int width() {
    int end = cells.size();
    while (end > 0 && cells.get(end - 1).isEmpty()) {
      end--;
    }
    return end;
  }
}
