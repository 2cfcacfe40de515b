package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.weather.Medium;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Optional;

/** Puts the rows of a log of readings on one line of time, and the readings together to days. */
final class RowInstants {

  private final RawTable table;
  private final LogTimes times;
  private final TimeForm form;
  private final ReadReport.Collector report;
  private final LogClock clock;

  /** Rows in the order of the file, turned round where the newest stands first. */
  private final int[] rows;

  private final long[] instants;
  private final int count;

  RowInstants(RawTable table, LogTimes times, TimeForm form, ReadReport.Collector report) {
    this.table = table;
    this.times = times;
    this.form = form;
    this.report = report;
    this.clock = new LogClock(form.zone(), form.dayOffset());
    rows = rowsOldestFirst();
    instants = new long[rows.length];
    this.count = readInstants();
  }

  /** Instants of the rows that have one, which move to the front; answers how many they are. */
  private int readInstants() {
    var steady = new SteadyClock(form.zone());
    boolean hasOffsets = times.offset(rows[0]) != LogTimes.NO_OFFSET;
    int kept = 0;
    for (int row : rows) {
      long local = times.local(row);
      boolean hasOffset = times.offset(row) != LogTimes.NO_OFFSET;
      // The clock itself is asked where something has to be decided or told.
      if (kept > 0 && hasOffset == hasOffsets && (hasOffset || steady.isSteady(local))) {
        rows[kept] = row;
        instants[kept++] = local - (hasOffset ? times.offset(row) : steady.offset());
        continue;
      }
      var instant = clock.instant(stamp(row), times.place(row));
      if (instant.isPresent()) {
        rows[kept] = row;
        instants[kept++] = instant.getAsLong();
      }
    }
    return kept;
  }

  private TimePattern.Stamp stamp(int row) {
    long offset = times.offset(row);
    return new TimePattern.Stamp(
        times.local(row),
        offset == LogTimes.NO_OFFSET
            ? Optional.empty()
            : Optional.of(ZoneOffset.ofTotalSeconds((int) offset)));
  }

  private int[] rowsOldestFirst() {
    int back = 0;
    int forth = 0;
    for (int i = 1; i < times.size(); i++) {
      back += times.local(i) < times.local(i - 1) ? 1 : 0;
      forth += times.local(i) > times.local(i - 1) ? 1 : 0;
    }
    boolean turned = back > forth;
    var result = new int[times.size()];
    for (int i = 0; i < result.length; i++) {
      result[i] = turned ? result.length - 1 - i : i;
    }
    if (turned) {
      report.add(Deed.REPAIRED, table.file(), "the newest line stands first: read from the end");
    }
    return result;
  }

  TemperatureLog assembled(
      double[] celsius,
      String column,
      Optional<ReadingTime> timing,
      LogFormat format,
      String place,
      Medium medium) {
    var order =
        RowOrder.of(
            count == rows.length ? instants : Arrays.copyOf(instants, count), rows, times, report);
    requireNoDoubledHour(order);
    var series = series(order, celsius, column);
    clock.tell(report, table.file());
    series.noteOddities(report);
    report.add(
        timing.isPresent() ? Deed.NOTED : Deed.ASSUMED,
        table.file(),
        "each time is " + timing.orElse(ReadingTime.INSTANT).words());
    var step = step(series, format);
    boolean ends = timing.orElse(ReadingTime.INSTANT) == ReadingTime.INTERVAL_END;
    // An interval that ends at midnight is the last one of the day before.
    var ofDays = ends ? series.earlier(1) : series;
    var daily =
        new DayAssembly(ofDays, clock.dayOffset(), step, format.completeness())
            .daily(place, medium, report, table.file());
    var complete = timing.isPresent() ? format.withReadingTime(timing.get()) : format;
    return new TemperatureLog(
        daily,
        Optional.of(series.readings(place, medium, clock.dayOffset())),
        complete.withStep(step),
        report.report());
  }

  /** Where readings come at no usual distance, only the gaps decide whether a day is complete. */
  private Duration step(ReadingSeries series, LogFormat format) {
    if (form.step().isEmpty() && series.size() > 2 && series.isIrregular()) {
      report.add(
          Deed.ASSUMED,
          table.file(),
          "the readings come at no regular step: a day counts when it has no long gap");
      return format.completeness().longestGap();
    }
    return series.step(form.step(), report, table.file());
  }

  /** Lines sorted into an hour that comes twice could be of either hour. */
  private void requireNoDoubledHour(int[] order) {
    for (int i = 0; i < order.length; i++) {
      if (order[i] != i && clock.hasDoubledHour()) {
        throw InputProblem.at(
                times.place(rows[order[i]]),
                "a line out of order, in a log that goes over the setting back of a clock")
            .expected("lines in the order in which they were recorded")
            .because("the hour that comes twice is told apart by the order of the lines")
            .mend("sort the lines by the time of recording, or export the log in UTC");
      }
    }
  }

  private ReadingSeries series(int[] order, double[] celsius, String column) {
    var series = new ReadingSeries(table.name(), column, count);
    var repeated = new Tally(Deed.DROPPED, "a line that repeats the time and value of another");
    var emptied =
        new Tally(Deed.DROPPED, "a line without a value, at a time that another line has too");
    int last = -1;
    for (int at : order) {
      if (last >= 0 && instants[last] == instants[at]) {
        double before = celsius[rows[last]];
        double value = celsius[rows[at]];
        if (Double.compare(before, value) == 0) {
          repeated.add(times.place(rows[at]));
          continue;
        }
        if (!Double.isNaN(before) && !Double.isNaN(value)) {
          throw RowOrder.contradiction(times, rows[at], rows[last], form.zone().isPresent());
        }
        emptied.add(times.place(rows[Double.isNaN(value) ? at : last]));
        if (Double.isNaN(value)) {
          continue;
        }
      }
      last = at;
      if (!Double.isNaN(celsius[rows[at]])) {
        series.add(instants[at], celsius[rows[at]], table.line(rows[at]));
      }
    }
    repeated.tell(report);
    emptied.tell(report);
    return series;
  }
}
