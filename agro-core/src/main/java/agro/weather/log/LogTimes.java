package agro.weather.log;

import agro.report.SourceLocation;
import java.time.LocalDate;
import java.util.Optional;

/** The times of all rows of a log on the clock that wrote them. */
final class LogTimes {

  static final long NO_OFFSET = Long.MIN_VALUE;
  private static final int SECONDS_OF_DAY = 86_400;

  private final RawTable table;
  private final int column;
  private final long[] local;
  private final long[] offsets;
  private final boolean hasClock;
  private final Optional<DateOrder> order;

  /**
   * Takes over the arrays.
   *
   * @param local seconds from 1970-01-01T00:00 on the clock of each row
   * @param offsets offset of each row in seconds, or {@link #NO_OFFSET}; empty when no row has one
   */
  LogTimes(
      RawTable table,
      int column,
      long[] local,
      long[] offsets,
      boolean hasClock,
      Optional<DateOrder> order) {
    this.table = table;
    this.column = column;
    this.local = local;
    this.offsets = offsets;
    this.hasClock = hasClock;
    this.order = order;
  }

  /** Whether a number can be seconds or thousandths of seconds since 1970, after 1985. */
  static boolean isUnix(NumberCell number) {
    double seconds = unixSeconds(number);
    return number.digits().length() >= 9 && seconds > 4.7e8 && seconds < 5.7e9;
  }

  static double unixSeconds(NumberCell number) {
    return number.value() > 1e11 ? number.value() / 1000 : number.value();
  }

  int size() {
    return local.length;
  }

  long local(int row) {
    return local[row];
  }

  long offset(int row) {
    return offsets.length == 0 ? NO_OFFSET : offsets[row];
  }

  /** The order of the dates, where it had to be decided. */
  Optional<DateOrder> order() {
    return order;
  }

  LocalDate day(int row) {
    return LocalDate.ofEpochDay(epochDay(row));
  }

  private long epochDay(int row) {
    return Math.floorDiv(local[row], SECONDS_OF_DAY);
  }

  long clock(int row) {
    return Math.floorMod(local[row], SECONDS_OF_DAY);
  }

  SourceLocation place(int row) {
    return table.location(row, column);
  }

  /** The time as written. */
  String text(int row) {
    return table.rows().get(row).cell(column);
  }

  /** Whether there is one row a day: no times, or the same time of the day in every row. */
  boolean isDaily() {
    if (!hasClock) {
      return true;
    }
    long clock = clock(0);
    int otherClock = 0;
    int sameDay = 0;
    for (int i = 1; i < local.length && Math.max(otherClock, sameDay) * 10L <= local.length; i++) {
      otherClock += clock(i) == clock ? 0 : 1;
      sameDay += epochDay(i) == epochDay(i - 1) ? 1 : 0;
    }
    return otherClock * 10L <= local.length && sameDay * 10L <= local.length && local.length > 1;
  }

  /** The time of the day that all rows have. */
  long usualClock() {
    return clock(local.length / 2);
  }

  boolean hasClock() {
    return hasClock;
  }

  /** Whether the hours run from 1 to 12 only, as on a clock without AM and PM. */
  boolean isTwelveHourClock() {
    boolean late = false;
    for (int i = 0; i < local.length; i++) {
      long hour = clock(i) / 3600;
      if (hour < 1 || hour > 12) {
        return false;
      }
      late |= hour == 12;
    }
    return late;
  }
}
