package agro.weather.log;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import agro.weather.log.WrittenTime.DateParts;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Puts the time of one row together from the columns that hold its parts. */
final class TimeCells {

  private static final int HIGHEST_HOUR = 24;

  private final RawTable table;
  private final List<TimePartColumn> columns;
  private final int[] places;
  private final boolean isOne;
  private final boolean hoursWithMinutes;

  TimeCells(RawTable table, List<TimePartColumn> columns) {
    this.table = table;
    this.columns = columns;
    places = new int[columns.size()];
    for (int i = 0; i < places.length; i++) {
      places[i] = table.indexOf(columns.get(i).name());
    }
    isOne = columns.size() == 1;
    hoursWithMinutes = hoursWithMinutes();
  }

  static InputProblem.Found problem(SourceLocation place, String cell) {
    var shown = cell.length() > 60 ? cell.substring(0, 60) + "..." : cell;
    return InputProblem.at(place, "the cell reads \"" + shown + "\"");
  }

  /** Hours above 24 are hours and minutes, such as 1330. */
  private boolean hoursWithMinutes() {
    int hour = Math.max(place(TimePart.HOUR), place(TimePart.CLOCK));
    if (hour < 0) {
      return false;
    }
    for (var row : table.rows()) {
      var number = NumberCell.of(row.cell(hour));
      if (number.isPresent() && number.get().value() > HIGHEST_HOUR) {
        return true;
      }
    }
    return false;
  }

  /** How wide a number is written, so that a lost digit is seen among the others. */
  private static String width(String text) {
    return text.length() == 2 || text.length() == 4 ? text.charAt(0) == '0' ? "0" : "2" : "1";
  }

  private int place(TimePart part) {
    for (int i = 0; i < places.length; i++) {
      if (columns.get(i).part() == part) {
        return places[i];
      }
    }
    return -1;
  }

  WrittenTime time(TableRow row) {
    if (isOne) {
      return whole(row, places[0]);
    }
    int date = place(TimePart.DATE);
    var day = date >= 0 ? date(row, date) : numbered(row);
    int clock = place(TimePart.CLOCK);
    if (clock >= 0) {
      return joined(day, clock(row, clock));
    }
    int hour = place(TimePart.HOUR);
    if (hour < 0) {
      return day;
    }
    int minute = place(TimePart.MINUTE);
    int hours = number(row, hour, 0, 2400);
    int minutes = minute < 0 ? 0 : number(row, minute, 0, 59);
    if (hoursWithMinutes) {
      minutes = hours % 100;
      hours /= 100;
    }
    if (hours > HIGHEST_HOUR || minutes > 59 || (hours == HIGHEST_HOUR && minutes > 0)) {
      throw unread(row, hour, "an hour of the day, 0 to 24");
    }
    return new WrittenTime(
        day.date(),
        hours * 3600 + minutes * 60,
        day.offsetSeconds(),
        "",
        day.shape() + "H",
        day.widths() + width(row.cell(hour)),
        false);
  }

  private WrittenTime whole(TableRow row, int column) {
    var time = WrittenTime.of(row.cell(column));
    if (time.isEmpty() || time.get().date().isEmpty()) {
      throw unread(row, column, "a date and time, such as 2021-05-31 13:00");
    }
    return time.get();
  }

  private WrittenTime date(TableRow row, int column) {
    var time = whole(row, column);
    // Spreadsheets write a date column with a midnight that is not meant.
    boolean isMidnight = time.clock() == 0;
    if (time.hasClock() && !isMidnight) {
      throw unread(row, column, "a date without a time, since the time has its own column");
    }
    return time;
  }

  private static WrittenTime joined(WrittenTime day, WrittenTime clock) {
    var offset = clock.offsetSeconds().isPresent() ? clock.offsetSeconds() : day.offsetSeconds();
    return new WrittenTime(
        day.date(),
        clock.clock(),
        offset,
        clock.zone().isEmpty() ? day.zone() : clock.zone(),
        day.shape() + " " + clock.shape(),
        day.widths() + clock.widths(),
        clock.hasFraction());
  }

  private WrittenTime clock(TableRow row, int column) {
    var text = row.cell(column);
    int half = place(TimePart.HALF_DAY);
    var whole = half >= 0 ? text + " " + row.cell(half) : text;
    var time = WrittenTime.of(whole).filter(WrittenTime::isClockOnly).or(() -> ofDigits(text));
    return time.orElseThrow(
        () -> unread(row, column, "a time of the day, such as 13:30, 1330 or 1:30 PM"));
  }

  /** 1330 or 930, and a number of at most two digits for a whole hour. */
  private Optional<WrittenTime> ofDigits(String text) {
    var number = NumberCell.of(text);
    if (number.isEmpty() || !number.get().isWhole() || text.length() > 4 || text.charAt(0) == '-') {
      return Optional.empty();
    }
    int value = (int) number.get().value();
    boolean both = hoursWithMinutes || text.length() > 2;
    int hour = both ? value / 100 : value;
    int minute = both ? value % 100 : 0;
    boolean exists = minute < 60 && (hour < HIGHEST_HOUR || (hour == HIGHEST_HOUR && minute == 0));
    return exists
        ? Optional.of(
            new WrittenTime(
                Optional.empty(),
                hour * 3600 + minute * 60,
                OptionalLong.empty(),
                "",
                "digits",
                width(text),
                false))
        : Optional.empty();
  }

  private WrittenTime numbered(TableRow row) {
    int year = number(row, place(TimePart.YEAR), 0, 2150);
    int ofYear = place(TimePart.DAY_OF_YEAR);
    DateParts parts;
    if (ofYear >= 0) {
      parts = new DateParts(year, number(row, ofYear, 1, 366), 0, DateParts.Form.DAY_OF_YEAR);
    } else {
      int month = month(row, place(TimePart.MONTH));
      int day = number(row, place(TimePart.DAY), 1, 31);
      parts = new DateParts(year, month, day, DateParts.Form.YEAR_FIRST);
    }
    if (parts.day(DateOrder.YEAR_FIRST).isEmpty()) {
      throw unread(
          row, place(TimePart.YEAR), "a day of the calendar, with four digits of the year");
    }
    return new WrittenTime(
        Optional.of(parts), WrittenTime.NO_CLOCK, OptionalLong.empty(), "", "numbers", "", false);
  }

  private int month(TableRow row, int column) {
    var named = WrittenTime.of("1 " + row.cell(column) + " 2000");
    return named.isPresent() && named.get().date().isPresent()
        ? named.get().date().get().second()
        : number(row, column, 1, 12);
  }

  private int number(TableRow row, int column, int least, int most) {
    var number = NumberCell.of(row.cell(column));
    boolean fits =
        number.isPresent()
            && number.get().isWhole()
            && number.get().value() >= least
            && number.get().value() <= most;
    if (!fits) {
      throw unread(row, column, "a whole number from " + least + " to " + most);
    }
    return (int) number.get().value();
  }

  private InputProblem unread(TableRow row, int column, String expected) {
    return problem(table.location(row, column), row.cell(column))
        .expected(expected)
        .because("a reading without its time cannot be put into a day")
        .mend(
            row.cell(column).isBlank()
                ? "write the date into every line if it stands in the first one of a day alone, or"
                    + " take the line out"
                : "correct the cell or take the line out; or declare how the log writes its"
                    + " times");
  }
}
