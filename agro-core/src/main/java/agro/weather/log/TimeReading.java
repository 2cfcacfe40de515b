package agro.weather.log;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the times of a log from their columns, all alike, with the order of the dates decided. */
final class TimeReading {

  private static final int STEP = 5_000;
  private static final int MOST_NUMBERS = 4;

  private final RawTable table;
  private final List<TimePartColumn> columns;
  private final TimeForm form;
  private final ReadReport.Collector report;
  private final Tally midnight =
      new Tally(Deed.ASSUMED, "a date without a time of the day is taken for its midnight");
  private final Tally fractions = new Tally(Deed.NOTED, "fractions of a second are left away");

  TimeReading(
      RawTable table, List<TimePartColumn> columns, TimeForm form, ReadReport.Collector report) {
    this.table = table;
    this.columns = columns;
    this.form = form;
    this.report = report;
  }

  LogTimes read(Progress progress) {
    var first = columns.get(0);
    if (first.part() == TimePart.UNIX) {
      return unix();
    }
    if (first.part() == TimePart.SERIAL) {
      return serial();
    }
    if (form.pattern().isPresent()) {
      return patterned(TimePattern.of(form.pattern().get()));
    }
    var cells = new TimeCells(table, columns);
    int rows = table.rows().size();
    var times = new ArrayList<WrittenTime>(rows);
    var work = "reading the times of " + table.name();
    for (int i = 0; i < rows; i++) {
      if (i % STEP == 0) {
        progress.step(work, i, rows);
      }
      times.add(cells.time(table.rows().get(i)));
    }
    progress.step(work, rows, rows);
    requireAlike(times);
    requireOneWidth(times);
    return ordered(times);
  }

  private int column() {
    return table.indexOf(columns.get(0).name());
  }

  private SourceLocation place(int row) {
    return table.location(table.rows().get(row), column());
  }

  private LogTimes ordered(List<WrittenTime> times) {
    boolean needsOrder = false;
    boolean isShort = false;
    boolean hasClock = false;
    for (var time : times) {
      var parts = time.date().orElseThrow();
      needsOrder |= parts.needsOrder();
      isShort |= parts.isShort();
      hasClock |= time.hasClock();
    }
    var column = table.file().column(columns.get(0).name());
    var example = table.rows().get(0).cell(column());
    var order =
        needsOrder
            ? form.order().orElseGet(() -> DateOrderEvidence.decide(times, column, example, report))
            : DateOrder.YEAR_FIRST;
    if (isShort) {
      report.add(Deed.ASSUMED, column, "years of two digits are those of 1950 to 2049");
    }
    var local = new long[times.size()];
    var offsets = new long[times.size()];
    for (int i = 0; i < local.length; i++) {
      local[i] = local(times.get(i), order, hasClock, i);
      offsets[i] = offset(times.get(i), i);
    }
    midnight.tell(report);
    fractions.tell(report);
    return new LogTimes(
        table,
        column(),
        local,
        offsets,
        hasClock,
        needsOrder ? Optional.of(order) : Optional.empty());
  }

  private long local(WrittenTime time, DateOrder order, boolean hasClock, int row) {
    var day =
        time.date()
            .orElseThrow()
            .day(order)
            .orElseThrow(
                () ->
                    TimeCells.problem(place(row), table.rows().get(row).cell(column()))
                        .expected("a day of the calendar, read as " + order.words())
                        .because("a reading without its day cannot be used, nor be left out unseen")
                        .mend("correct the date, or declare the order with withDateOrder"));
    if (hasClock && !time.hasClock()) {
      midnight.add(place(row));
    }
    if (time.hasFraction()) {
      fractions.add(place(row));
    }
    return day.toEpochDay() * 86_400 + Math.max(0, time.clock());
  }

  private long offset(WrittenTime time, int row) {
    if (time.offsetSeconds().isPresent()) {
      return time.offsetSeconds().getAsLong();
    }
    boolean needsZone = !time.zone().isEmpty() && form.zone().isEmpty();
    return needsZone ? ZoneNames.offset(time.zone(), place(row)) : LogTimes.NO_OFFSET;
  }

  /** A log writes its times in one way; a cell in another way is damaged. */
  private void requireAlike(List<WrittenTime> times) {
    Map<String, Integer> shapes = new HashMap<>();
    for (var time : times) {
      shapes.merge(time.shape(), 1, Integer::sum);
    }
    if (shapes.size() == 1) {
      return;
    }
    var usual = "";
    for (var entry : shapes.entrySet()) {
      usual = entry.getValue() > shapes.getOrDefault(usual, 0) ? entry.getKey() : usual;
    }
    for (int i = 0; i < times.size(); i++) {
      var time = times.get(i);
      boolean barePartOfUsual = !time.hasClock() && usual.startsWith(time.shape());
      if (!time.shape().equals(usual) && !barePartOfUsual) {
        throw TimeCells.problem(place(i), table.rows().get(i).cell(column()))
            .expected("a time written like the others, such as \"" + example(times, usual) + "\"")
            .because("a cell that is written in another way may be damaged")
            .mend("write all times alike");
      }
    }
  }

  /** A log writes 05 or 5, not both: a digit may be lost otherwise. */
  private void requireOneWidth(List<WrittenTime> times) {
    for (int place = 0; place < MOST_NUMBERS; place++) {
      int narrow = 0;
      int zero = 0;
      for (var time : times) {
        char width = width(time, place);
        narrow += width == '1' ? 1 : 0;
        zero += width == '0' ? 1 : 0;
      }
      if (narrow == 0 || zero == 0) {
        continue;
      }
      char rare = narrow < zero ? '1' : '0';
      for (int i = 0; i < times.size(); i++) {
        if (width(times.get(i), place) == rare) {
          throw TimeCells.problem(place(i), table.rows().get(i).cell(column()))
              .expected("numbers of one digit written alike in all lines, such as 5 or 05")
              .because("a digit may be lost, and then the date is another one")
              .mend("write all times alike");
        }
      }
    }
  }

  private static char width(WrittenTime time, int place) {
    return place < time.widths().length() ? time.widths().charAt(place) : ' ';
  }

  private String example(List<WrittenTime> times, String shape) {
    for (int i = 0; i < times.size(); i++) {
      if (times.get(i).shape().equals(shape)) {
        return table.rows().get(i).cell(column());
      }
    }
    return "";
  }

  private LogTimes patterned(TimePattern pattern) {
    int column = column();
    var local = new long[table.rows().size()];
    var offsets = new long[local.length];
    boolean hasClock = false;
    for (int i = 0; i < local.length; i++) {
      var stamp = pattern.parse(table.rows().get(i).cell(column), place(i));
      local[i] = stamp.localSeconds();
      offsets[i] =
          stamp.offset().isPresent() ? stamp.offset().get().getTotalSeconds() : LogTimes.NO_OFFSET;
      hasClock |= Math.floorMod(local[i], 86_400L) != 0;
    }
    return new LogTimes(table, column, local, offsets, hasClock, Optional.empty());
  }

  private LogTimes unix() {
    int column = column();
    var local = new long[table.rows().size()];
    for (int i = 0; i < local.length; i++) {
      var cell = table.rows().get(i).cell(column);
      var number = NumberCell.of(cell);
      if (number.isEmpty() || !LogTimes.isUnix(number.get())) {
        throw TimeCells.problem(place(i), cell)
            .expected("a number of seconds since 1970, like the others")
            .because("a reading without its time cannot be put into a day")
            .mend("correct the cell or take the line out");
      }
      local[i] = Math.round(LogTimes.unixSeconds(number.get()));
    }
    return new LogTimes(table, column, local, new long[local.length], true, Optional.empty());
  }

  private LogTimes serial() {
    int column = column();
    var local = new long[table.rows().size()];
    var offsets = new long[local.length];
    boolean hasClock = false;
    for (int i = 0; i < local.length; i++) {
      var cell = table.rows().get(i).cell(column);
      var number = NumberCell.of(cell).map(NumberCell::value).orElse(Double.NaN);
      var beginning = form.serialDays().orElseThrow(() -> undeclared(cell));
      if (!beginning.holds(number)) {
        throw TimeCells.problem(place(i), cell)
            .expected("a number of days from 61 to 91000, as spreadsheets count them")
            .because("another number is no day of a log")
            .mend("export the times as text, in the form 2021-05-01 12:00");
      }
      local[i] = beginning.localSeconds(number);
      offsets[i] = LogTimes.NO_OFFSET;
      hasClock |= Math.floorMod(local[i], 86_400L) != 0;
    }
    report.add(
        Deed.NOTED, table.file(), "times are numbers of days " + words(form.serialDays().get()));
    return new LogTimes(table, column, local, offsets, hasClock, Optional.empty());
  }

  private static String words(SerialDays beginning) {
    return beginning == SerialDays.SINCE_1900 ? "since 1900" : "since 1904";
  }

  private InputProblem undeclared(String cell) {
    return InputProblem.at(
            table.file().column(columns.get(0).name()),
            "the times are numbers such as \"" + cell + "\"")
        .expected("dates and times, or a declaration that these are numbers of days")
        .because("spreadsheets count days from two different beginnings, four years apart")
        .mend(
            "declare it: LogFormat.detect().withSerialDays(SerialDays.SINCE_1900), or SINCE_1904");
  }
}
