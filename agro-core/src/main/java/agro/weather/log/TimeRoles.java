package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Finds the columns that hold the time. */
final class TimeRoles {

  private final RawTable table;
  private final ColumnContent content;
  private final ReadReport.Collector report;

  TimeRoles(RawTable table, ColumnContent content, ReadReport.Collector report) {
    this.table = table;
    this.content = content;
    this.report = report;
  }

  List<TimePartColumn> find(boolean serialDeclared) {
    var dates = new ArrayList<Integer>();
    for (int i = 0; i < table.headings().size(); i++) {
      if (content.is(i, CellLook.DATE) && content.kind(i) != ColumnKind.TEMPERATURE) {
        dates.add(i);
      }
    }
    if (!dates.isEmpty()) {
      return withDate(dates);
    }
    int year = first(ColumnKind.YEAR);
    if (year >= 0) {
      return numbered(year);
    }
    int time = first(ColumnKind.TIME);
    boolean numbers = time >= 0 && content.is(time, CellLook.NUMBER);
    if (numbers && !serialDeclared && content.isUnix(time)) {
      report.add(
          Deed.NOTED,
          table.file(),
          "the times in \"" + table.headings().get(time) + "\" count from 1970-01-01T00:00Z");
      return List.of(column(time, TimePart.UNIX));
    }
    if (serialDeclared || numbers) {
      return List.of(column(Math.max(0, time), TimePart.SERIAL));
    }
    throw InputProblem.at(table.file(), "no column of dates")
        .expected("a column of dates, such as 2021-05-31, or columns of year, month and day")
        .because("temperatures without their time cannot be put into days")
        .mend("look whether this is the file that was meant, or declare its columns");
  }

  private TimePartColumn column(int index, TimePart part) {
    return new TimePartColumn(table.headings().get(index), part);
  }

  private int first(ColumnKind kind) {
    for (int i = 0; i < table.headings().size(); i++) {
      if (content.kind(i) == kind) {
        return i;
      }
    }
    return -1;
  }

  private List<TimePartColumn> withDate(List<Integer> dates) {
    int date = chosen(dates);
    if (content.hasClock(date)) {
      return List.of(column(date, TimePart.DATE_TIME));
    }
    int clock = clock(date);
    if (clock < 0) {
      return List.of(column(date, TimePart.DATE_TIME));
    }
    var times = new ArrayList<TimePartColumn>();
    times.add(column(date, TimePart.DATE));
    boolean isHour = content.kind(clock) == ColumnKind.HOUR && content.is(clock, CellLook.NUMBER);
    times.add(column(clock, isHour ? TimePart.HOUR : TimePart.CLOCK));
    addMinute(times, clock);
    addHalfDay(times);
    return times;
  }

  /** Of several columns of times, the one in UTC says most; otherwise the choice is not ours. */
  private int chosen(List<Integer> dates) {
    if (dates.size() == 1) {
      return dates.get(0);
    }
    var universal = new ArrayList<Integer>();
    var names = new ArrayList<String>();
    for (int each : dates) {
      var heading = table.headings().get(each);
      names.add("\"" + heading + "\"");
      var upper = heading.toUpperCase(Locale.ROOT);
      if (upper.contains("UTC") || upper.contains("GMT")) {
        universal.add(each);
      }
    }
    if (universal.size() == 1) {
      report.add(
          Deed.NOTED,
          table.file(),
          "of the columns " + String.join(", ", names) + ", the one in UTC gives the times");
      return universal.get(0);
    }
    throw InputProblem.at(table.file(), "several columns of dates: " + String.join(", ", names))
        .expected("one column that says when the temperature was measured")
        .because("they may hold different times")
        .mend(
            "declare it: withColumns(new LogColumns.Readings("
                + names.get(0)
                + ", ...)) with the heading of the temperatures");
  }

  private int clock(int date) {
    for (int i = 0; i < table.headings().size(); i++) {
      if (i != date && content.is(i, CellLook.CLOCK)) {
        return i;
      }
    }
    for (int i = 0; i < table.headings().size(); i++) {
      boolean named = content.kind(i) == ColumnKind.TIME || content.kind(i) == ColumnKind.HOUR;
      if (i != date && named && content.is(i, CellLook.NUMBER)) {
        return i;
      }
    }
    return -1;
  }

  private void addMinute(List<TimePartColumn> times, int hour) {
    int next = hour + 1;
    if (next >= table.headings().size() || !content.is(next, CellLook.NUMBER)) {
      return;
    }
    boolean named = content.kind(next) == ColumnKind.MINUTE;
    var name = table.headings().get(next).toLowerCase(Locale.ROOT);
    boolean shortName = name.equals("min") || name.startsWith("mm");
    boolean other = first(ColumnKind.MAXIMUM) < 0 && content.isMinutes(next);
    if (named || (shortName && other)) {
      times.add(column(next, TimePart.MINUTE));
    }
  }

  private void addHalfDay(List<TimePartColumn> times) {
    for (int i = 0; i < table.headings().size(); i++) {
      if (content.isHalfDay(i)) {
        times.add(column(i, TimePart.HALF_DAY));
        return;
      }
    }
  }

  private List<TimePartColumn> numbered(int year) {
    var times = new ArrayList<TimePartColumn>();
    times.add(column(year, TimePart.YEAR));
    int ofYear = first(ColumnKind.DAY_OF_YEAR);
    int month = first(ColumnKind.MONTH);
    int day = first(ColumnKind.DAY);
    if (month >= 0 && day >= 0) {
      times.add(column(month, TimePart.MONTH));
      times.add(column(day, TimePart.DAY));
    } else if (ofYear >= 0 || day >= 0) {
      times.add(column(ofYear >= 0 ? ofYear : day, TimePart.DAY_OF_YEAR));
    } else {
      throw InputProblem.at(table.file(), "a column of the year, but none of the day")
          .expected("columns of month and day, or of the day of the year")
          .because("temperatures without their day cannot be used")
          .mend("name the columns year, month, day and hour, or declare them with withColumns");
    }
    int hour = first(ColumnKind.HOUR);
    int clock = hour >= 0 ? hour : clock(year);
    if (clock >= 0) {
      boolean isClock = content.is(clock, CellLook.CLOCK) || hour < 0;
      times.add(column(clock, isClock ? TimePart.CLOCK : TimePart.HOUR));
      addMinute(times, clock);
    }
    return times;
  }
}
