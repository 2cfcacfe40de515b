package agro.weather.log;

import java.util.List;

/** What a cell looks like by itself. */
enum CellLook {
  DATE,
  CLOCK,
  NUMBER,
  MISSING,
  TEXT;

  static CellLook of(String cell) {
    if (MissingWords.isWord(cell)) {
      return MISSING;
    }
    var time = WrittenTime.of(cell);
    if (time.isPresent()) {
      return time.get().isClockOnly() ? CLOCK : DATE;
    }
    return NumberCell.of(cell).isPresent() ? NUMBER : TEXT;
  }

  /** Index of the first date; -1 where there is none. */
  static int dateIn(List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      if (of(cells.get(i)) == DATE) {
        return i;
      }
    }
    return -1;
  }

  /** Whether a line with a date has a number or a missing one beside it. */
  static boolean hasValueBeside(List<String> cells, int date) {
    for (int i = 0; i < cells.size(); i++) {
      var look = i == date ? TEXT : of(cells.get(i));
      if (look == NUMBER || look == MISSING) {
        return true;
      }
    }
    return false;
  }

  /** Whether a line without a date is a line of numbers all the same. */
  static boolean isNumeric(List<String> cells) {
    int numbers = 0;
    for (var cell : cells) {
      var look = of(cell);
      if (look == TEXT) {
        return false;
      }
      numbers += look == NUMBER ? 1 : 0;
    }
    return numbers >= 2;
  }
}
