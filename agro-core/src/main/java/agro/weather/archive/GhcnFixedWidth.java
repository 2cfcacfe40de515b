package agro.weather.archive;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.util.function.Consumer;

/**
 * Lines of a {@code .dly} file, one element and month a line: station in columns 1 to 11, year 12
 * to 15, month 16 and 17, element 18 to 21, then for each of 31 days a value of five characters and
 * three flags (measurement, quality, source).
 */
final class GhcnFixedWidth {

  private static final int FIRST_VALUE = 21;
  private static final int VALUE_WIDTH = 5;
  private static final int DAY_WIDTH = 8;
  private static final int DAYS = 31;

  private final String file;

  GhcnFixedWidth(String file) {
    this.file = file;
  }

  /** Whether a line has the shape of this layout. */
  static boolean matches(String line) {
    return line.length() >= FIRST_VALUE + VALUE_WIDTH
        && line.indexOf(',') < 0
        && line.chars().limit(11).allMatch(GhcnFixedWidth::isIdentification)
        && line.substring(11, 17).chars().allMatch(GhcnFixedWidth::isDigit)
        && line.substring(17, FIRST_VALUE).chars().allMatch(GhcnFixedWidth::isIdentification);
  }

  void read(String line, long number, Consumer<GhcnLine> values) {
    var place = SourceLocation.line(file, number);
    if (!matches(line)) {
      throw InputProblem.at(place, "\"" + shortened(line) + "\"")
          .expected("station, year, month, element and 31 values with flags in fixed columns")
          .because("the columns decide which day a value belongs to")
          .mend("fetch the file again, and do not edit it with a program that moves blanks");
    }
    var station = line.substring(0, 11);
    int year = Integer.parseInt(line.substring(11, 15));
    int month = Integer.parseInt(line.substring(15, 17));
    var element = line.substring(17, FIRST_VALUE);
    if (GhcnLine.dayOrNull(year, month, 1) == null) {
      throw InputProblem.at(place.column("month"), "month " + month + " of " + year)
          .expected("a month from 01 to 12 in columns 16 and 17")
          .because("the days of the line cannot be placed")
          .mend("fetch the file again");
    }
    for (int day = 1; day <= DAYS; day++) {
      int start = FIRST_VALUE + (day - 1) * DAY_WIDTH;
      if (start + VALUE_WIDTH > line.length()) {
        // Blanks at the end of a line are often cut; a value that is cut in two is refused.
        requireNothingLeft(line, start, place);
        return;
      }
      int tenths = value(line.substring(start, start + VALUE_WIDTH), day, place);
      char flag = start + 6 < line.length() ? line.charAt(start + 6) : ' ';
      var date = GhcnLine.dayOrNull(year, month, day);
      if (date != null) {
        values.accept(new GhcnLine(number, station, date, element, tenths, flag, ""));
      } else if (tenths != GhcnLine.MISSING) {
        throw InputProblem.at(place.column("value of day " + day), "a value of " + tenths)
            .expected("the code -9999, for the month has no such day")
            .because("the columns of the line may be shifted")
            .mend("fetch the file again");
      }
    }
  }

  private static int value(String cell, int day, SourceLocation place) {
    var digits = cell.strip();
    try {
      return Integer.parseInt(digits);
    } catch (NumberFormatException e) {
      throw InputProblem.at(place.column("value of day " + day), "\"" + cell + "\"")
          .expected("a whole number of tenths of a degree in five columns, or -9999")
          .because("the temperature of that day cannot be told")
          .mend("fetch the file again");
    }
  }

  private static void requireNothingLeft(String line, int start, SourceLocation place) {
    if (start < line.length() && !line.substring(start).isBlank()) {
      throw InputProblem.at(place, "a line that ends in the middle of a value")
          .expected("values of five columns, each with three flags")
          .because("the last value is cut and would be read too small")
          .mend("fetch the file again");
    }
  }

  static String shortened(String line) {
    return line.length() <= 40 ? line : line.substring(0, 40) + "…";
  }

  private static boolean isIdentification(int c) {
    return isDigit(c) || (c >= 'A' && c <= 'Z') || c == '-' || c == '_';
  }

  private static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }
}
