package agro.weather.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What the cells of each column look like, from a sample of the rows. */
final class ColumnContent {

  private static final int MOST_ROWS = 300;

  private final RawTable table;
  private final List<TableRow> sample = new ArrayList<>();
  private final List<ColumnKind> kinds = new ArrayList<>();
  private final List<Map<CellLook, Integer>> looks = new ArrayList<>();

  ColumnContent(RawTable table) {
    this.table = table;
    int every = Math.max(1, table.rows().size() / MOST_ROWS);
    for (int i = 0; i < table.rows().size(); i += every) {
      sample.add(table.rows().get(i));
    }
    for (int column = 0; column < table.headings().size(); column++) {
      boolean named = table.form().headingLine().orElse(0) > 0;
      kinds.add(named ? HeadingWords.kind(table.headings().get(column)) : ColumnKind.UNKNOWN);
      looks.add(looks(column));
    }
  }

  private Map<CellLook, Integer> looks(int column) {
    var counts = new EnumMap<CellLook, Integer>(CellLook.class);
    for (var row : sample) {
      counts.merge(CellLook.of(row.cell(column)), 1, Integer::sum);
    }
    return counts;
  }

  ColumnKind kind(int column) {
    return kinds.get(column);
  }

  private int count(int column, CellLook look) {
    return looks.get(column).getOrDefault(look, 0);
  }

  /** Whether most cells that hold anything look so, and at least one does. */
  boolean is(int column, CellLook look) {
    int full = sample.size() - count(column, CellLook.MISSING);
    int count = count(column, look);
    return count > 0 && count * 2 > full;
  }

  /** Whether no cell holds a value. */
  boolean isMissing(int column) {
    return count(column, CellLook.MISSING) == sample.size();
  }

  boolean hasClock(int column) {
    int clocks = 0;
    for (var row : sample) {
      boolean has = WrittenTime.of(row.cell(column)).map(WrittenTime::hasClock).orElse(false);
      clocks += has ? 1 : 0;
    }
    // A date column that a spreadsheet exports with 00:00:00 everywhere holds no times.
    return clocks > 0 && !isMidnight(column);
  }

  private boolean isMidnight(int column) {
    boolean otherClock = hasOtherClock(column);
    for (var row : sample) {
      var time = WrittenTime.of(row.cell(column));
      if (time.isPresent() && time.get().clock() > 0) {
        return false;
      }
    }
    return otherClock;
  }

  private boolean hasOtherClock(int column) {
    for (int i = 0; i < looks.size(); i++) {
      if (i != column && is(i, CellLook.CLOCK)) {
        return true;
      }
    }
    return false;
  }

  boolean isMinutes(int column) {
    for (var row : sample) {
      var number = NumberCell.of(row.cell(column));
      boolean fits =
          number.isPresent()
              && number.get().isWhole()
              && number.get().value() >= 0
              && number.get().value() < 60;
      if (!fits) {
        return false;
      }
    }
    return true;
  }

  /** Whether all numbers can be seconds or thousandths since 1970, from 1985 to about 2150. */
  boolean isUnix(int column) {
    for (var row : sample) {
      var number = NumberCell.of(row.cell(column));
      if (number.isEmpty() || !LogTimes.isUnix(number.get())) {
        return false;
      }
    }
    return true;
  }

  boolean isHalfDay(int column) {
    int halves = 0;
    for (var row : sample) {
      var cell = row.cell(column);
      halves += cell.equalsIgnoreCase("AM") || cell.equalsIgnoreCase("PM") ? 1 : 0;
    }
    return halves * 2 > sample.size();
  }

  /** Whether most cells name a unit of temperature. */
  boolean isUnit(int column) {
    int units = 0;
    for (var row : sample) {
      units += UnitWords.ofCell(row.cell(column)).isPresent() ? 1 : 0;
    }
    return units * 2 > sample.size() && !is(column, CellLook.NUMBER);
  }

  RawTable table() {
    return table;
  }
}
