package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.log.ExtremesReadAt.MaximumDay;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the rows of a log of daily extremes into a series of days. */
final class ExtremesRows {

  private static final int LEAST_SWAPPED = 3;

  private final RawTable table;
  private final LogTimes times;
  private final LogColumns.Extremes columns;
  private final ReadReport.Collector report;
  private final List<DailyExtremes> days = new ArrayList<>();
  private final List<LocalDate> absent = new ArrayList<>();
  private final Tally repeated =
      new Tally(Deed.DROPPED, "a line that repeats the day and the values of another");
  private final Tally halves =
      new Tally(Deed.DROPPED, "one extreme of a day without the other; the day is missing");

  ExtremesRows(
      RawTable table, LogTimes times, LogColumns.Extremes columns, ReadReport.Collector report) {
    this.table = table;
    this.times = times;
    this.columns = columns;
    this.report = report;
  }

  DailyTemperatures daily(
      double[] minima,
      double[] maxima,
      LogFormat format,
      Optional<LocalTime> observed,
      String place,
      Medium medium) {
    boolean swapped = areSwapped(minima, maxima);
    var low = swapped ? maxima : minima;
    var high = swapped ? minima : maxima;
    if (swapped) {
      report.add(
          Deed.REPAIRED,
          table.file(),
          "in every line the minimum is above the maximum: the headings are swapped, and the"
              + " values were read the other way round");
    }
    boolean moves = tellObservation(format, observed);
    var order = order();
    if (moves) {
      collectMoved(order, low, high);
    } else {
      collect(order, low, high);
    }
    halves.tell(report);
    repeated.tell(report);
    MissingDays.tell(absent, report, table.file());
    if (days.isEmpty()) {
      throw InputProblem.at(table.file(), "no day with both extremes")
          .expected("at least one day with a minimum and a maximum")
          .because("there is nothing to compute from")
          .mend("look at the columns and at what was taken for missing");
    }
    return DailyTemperatures.of(place, medium, days, DayOrigin.OBSERVED);
  }

  private boolean areSwapped(double[] minima, double[] maxima) {
    int swapped = 0;
    int right = 0;
    for (int i = 0; i < minima.length; i++) {
      swapped += minima[i] > maxima[i] ? 1 : 0;
      right += minima[i] < maxima[i] ? 1 : 0;
    }
    return right == 0 && swapped >= LEAST_SWAPPED;
  }

  /** Tells the hour of observation; true when maxima are to be moved to the day before. */
  private boolean tellObservation(LogFormat format, Optional<LocalTime> observed) {
    var declared = format.times().observation();
    if (declared.isPresent()) {
      boolean moves = declared.get().maximum() == MaximumDay.DAY_BEFORE;
      report.add(
          Deed.NOTED,
          table.file(),
          "read off at "
              + declared.get().time()
              + (moves
                  ? ": each maximum is given to the day before its date, as declared"
                  : ": both extremes stay on their date, as declared"));
      return moves;
    }
    boolean fromClock = times.hasClock() && times.usualClock() != 0;
    var time = fromClock ? Optional.of(LocalTime.ofSecondOfDay(times.usualClock())) : observed;
    time.filter(clock -> !clock.equals(LocalTime.MIDNIGHT))
        .ifPresent(
            clock ->
                report.add(
                    Deed.NOTED,
                    table.file(),
                    "the extremes were read off at "
                        + clock
                        + ", not at midnight: maxima of a morning reading belong to the day before."
                        + " They stay on their date; to move them, declare withExtremesReadAt(new"
                        + " ExtremesReadAt(LocalTime.parse(\""
                        + clock
                        + "\"), ExtremesReadAt.MaximumDay.DAY_BEFORE))"));
    return false;
  }

  private int[] order() {
    var seconds = new long[times.size()];
    var rows = new int[seconds.length];
    boolean turned = times.size() > 1 && times.day(0).isAfter(times.day(times.size() - 1));
    for (int i = 0; i < rows.length; i++) {
      rows[i] = turned ? rows.length - 1 - i : i;
      seconds[i] = times.day(rows[i]).toEpochDay() * 86_400;
    }
    if (turned) {
      report.add(Deed.REPAIRED, table.file(), "the newest line stands first: read from the end");
    }
    var order = RowOrder.of(seconds, rows, times, report);
    for (int i = 0; i < order.length; i++) {
      order[i] = rows[order[i]];
    }
    return order;
  }

  private void collect(int[] order, double[] low, double[] high) {
    int last = -1;
    for (int row : order) {
      if (last >= 0 && times.day(last).equals(times.day(row))) {
        repeat(last, row, low, high);
        continue;
      }
      if (last >= 0) {
        times.day(last).plusDays(1).datesUntil(times.day(row)).forEach(absent::add);
      }
      last = row;
      put(times.day(row), row, low[row], high[row]);
    }
  }

  /** The maximum of a reading goes to the day before, beside that day's own minimum. */
  private void collectMoved(int[] order, double[] low, double[] high) {
    int last = -1;
    for (int row : order) {
      if (last >= 0 && times.day(last).equals(times.day(row))) {
        repeat(last, row, low, high);
        continue;
      }
      if (last >= 0) {
        boolean next = times.day(last).plusDays(1).equals(times.day(row));
        put(times.day(last), last, low[last], next ? high[row] : Double.NaN);
        times.day(last).plusDays(1).datesUntil(times.day(row)).forEach(absent::add);
      }
      last = row;
    }
    if (last >= 0) {
      halves.add(times.place(last));
    }
  }

  private void put(LocalDate day, int row, double min, double max) {
    if (min > max) {
      throw InputProblem.at(
              table.location(table.rows().get(row), table.indexOf(columns.minimumColumn())),
              "the minimum "
                  + table.rows().get(row).cell(table.indexOf(columns.minimumColumn()))
                  + " of "
                  + day
                  + " is above the maximum "
                  + table.rows().get(row).cell(table.indexOf(columns.maximumColumn())))
          .expected("a minimum that is not above the maximum")
          .because("a day cannot be colder at its warmest than at its coldest")
          .mend("look whether the two values are swapped or one is mistyped");
    }
    if (Double.isNaN(min) != Double.isNaN(max)) {
      halves.add(times.place(row));
    } else if (!Double.isNaN(min)) {
      days.add(new DailyExtremes(day, min, max));
    }
  }

  private void repeat(int last, int row, double[] low, double[] high) {
    boolean same =
        Double.compare(low[last], low[row]) == 0 && Double.compare(high[last], high[row]) == 0;
    if (same) {
      repeated.add(times.place(row));
      return;
    }
    throw InputProblem.at(
            times.place(row),
            "the day "
                + times.day(row)
                + " stands also on line "
                + times.place(last).line()
                + ", with other values")
        .expected("each day once, or twice with the same values")
        .because("two pairs of extremes for a day cannot both hold")
        .mend("take one of the two lines out");
  }
}
