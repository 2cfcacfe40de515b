package agro.weather.archive;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.util.Locale;
import java.util.function.Consumer;

/**
 * Lines of a by-station file, one element and day a line with commas between: station, date as
 * YYYYMMDD, element, value, measurement flag, quality flag, source flag, time of observation. A
 * line of headings may stand at the top.
 */
final class GhcnByStation {

  private static final int LEAST_CELLS = 4;
  private static final int DATE_DIGITS = 8;

  private final String file;

  GhcnByStation(String file) {
    this.file = file;
  }

  /** Whether a line has the shape of this layout. */
  static boolean matches(String line) {
    var cells = line.split(",", -1);
    return cells.length >= LEAST_CELLS
        && (isHeading(cells)
            || (cells[0].length() == 11
                && isDate(cells[1])
                && cells[2].length() == 4
                && isWhole(cells[3])));
  }

  private static boolean isHeading(String[] cells) {
    return cells[0].strip().equals("ID")
        && cells[1].strip().toUpperCase(Locale.ROOT).startsWith("DATE")
        && cells[2].strip().equals("ELEMENT");
  }

  void read(String line, long number, Consumer<GhcnLine> values) {
    var cells = line.split(",", -1);
    if (number == 1 && cells.length >= LEAST_CELLS && isHeading(cells)) {
      return;
    }
    var place = SourceLocation.line(file, number);
    if (!matches(line)) {
      throw InputProblem.at(place, "\"" + GhcnFixedWidth.shortened(line) + "\"")
          .expected("station of 11 characters, date as YYYYMMDD, element, and a whole value")
          .because("the value cannot be placed")
          .mend("fetch the file again from the archive");
    }
    var date =
        GhcnLine.dayOrNull(
            Integer.parseInt(cells[1].substring(0, 4)),
            Integer.parseInt(cells[1].substring(4, 6)),
            Integer.parseInt(cells[1].substring(6)));
    if (date == null) {
      throw InputProblem.at(place.column("date"), "\"" + cells[1] + "\"")
          .expected("a day of the calendar as YYYYMMDD")
          .because("the value cannot be placed")
          .mend("fetch the file again from the archive");
    }
    values.accept(
        new GhcnLine(
            number,
            cells[0],
            date,
            cells[2],
            Integer.parseInt(cells[3].strip()),
            flag(cells),
            cells.length > 7 ? cells[7].strip() : ""));
  }

  private static char flag(String[] cells) {
    return cells.length > 5 && !cells[5].isBlank() ? cells[5].strip().charAt(0) : ' ';
  }

  private static boolean isDate(String cell) {
    return cell.length() == DATE_DIGITS && cell.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  private static boolean isWhole(String cell) {
    var digits = cell.strip();
    int from = digits.startsWith("-") ? 1 : 0;
    int length = digits.length() - from;
    return length > 0
        && length <= 5
        && digits.chars().skip(from).allMatch(c -> c >= '0' && c <= '9');
  }
}
