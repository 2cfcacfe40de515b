package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Days that are a copy of other days: in readings a whole day with the same values at the same
 * hours, in daily extremes a run of days with the same minima and maxima.
 *
 * @param leastReadings fewest readings of a day that are compared
 * @param leastDays fewest days of a run of daily extremes
 * @param leastRangeCelsius least range of the values, in °C; still weather repeats itself
 */
public record RepeatedCheck(int leastReadings, int leastDays, double leastRangeCelsius)
    implements QualityCheck, ReadingsTest, DailyTest {

  /**
   * Checks the limits.
   *
   * @throws InputProblem when there are too few values to compare
   */
  public RepeatedCheck {
    if (leastReadings < 4 || leastDays < 3 || !(leastRangeCelsius >= 0)) {
      throw InputProblem.of("copies of " + leastReadings + " readings or " + leastDays + " days")
          .expected("at least 4 readings and 3 days")
          .because("a few equal values are chance")
          .mend("give for example 8 readings, 7 days and 2 °C");
    }
  }

  /**
   * Days of 8 readings, runs of 7 days, both with a range of 2 °C (common practice).
   *
   * @return the check
   */
  public static RepeatedCheck usual() {
    return new RepeatedCheck(8, 7, 2);
  }

  @Override
  public QualityRule rule() {
    return QualityRule.REPEATED;
  }

  @Override
  public String limits() {
    return leastReadings
        + " readings of a day, or the extremes of "
        + leastDays
        + " days, with a range of "
        + Numbers.plain(leastRangeCelsius)
        + " °C";
  }

  @Override
  public void flag(ReadingsInTest series) {
    Map<Long, int[]> seen = new HashMap<>();
    int[] places = series.usable();
    for (int from = 0; from < places.length; ) {
      int to = from;
      while (to < places.length && series.epochDay(places[to]) == series.epochDay(places[from])) {
        to++;
      }
      if (saysEnough(series, places, from, to)) {
        var earlier = seen.putIfAbsent(hash(series, places, from, to), new int[] {from, to});
        if (earlier != null && sameDay(series, places, earlier, from, to)) {
          raise(series, places, earlier[0], from, to);
        }
      }
      from = to;
    }
  }

  private void raise(ReadingsInTest series, int[] places, int earlier, int from, int to) {
    series.fail(
        rule(),
        places[from],
        places[to - 1],
        to - from,
        leastReadings,
        "readings",
        "equal to those of "
            + series.when(places[earlier]).substring(0, 10)
            + ", hour by hour: one of the two days is a copy");
  }

  private boolean saysEnough(ReadingsInTest series, int[] places, int from, int to) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = from; i < to; i++) {
      low = Math.min(low, series.celsius(places[i]));
      high = Math.max(high, series.celsius(places[i]));
    }
    return to - from >= leastReadings && high - low >= leastRangeCelsius;
  }

  private static long hash(ReadingsInTest series, int[] places, int from, int to) {
    long hash = 1;
    for (int i = from; i < to; i++) {
      hash = 31 * hash + series.secondOfDay(places[i]);
      hash = 31 * hash + Double.doubleToLongBits(series.celsius(places[i]));
    }
    return hash;
  }

  private static boolean sameDay(
      ReadingsInTest series, int[] places, int[] earlier, int from, int to) {
    boolean same = earlier[1] - earlier[0] == to - from;
    for (int i = from; same && i < to; i++) {
      int one = places[i];
      int other = places[earlier[0] + i - from];
      same =
          series.secondOfDay(one) == series.secondOfDay(other)
              && series.celsius(one) == series.celsius(other);
    }
    return same;
  }

  @Override
  public void flag(DaysInTest series) {
    Map<List<Double>, Integer> seen = new HashMap<>();
    for (int day = 0; day + leastDays <= series.size(); day++) {
      var run = run(series, day);
      if (run.isEmpty()) {
        continue;
      }
      Integer earlier = seen.putIfAbsent(run, day);
      if (earlier == null || day - earlier < leastDays) {
        continue;
      }
      int length = leastDays;
      while (same(series, earlier + length, day + length) && earlier + length < day) {
        length++;
      }
      series.fail(
          rule(),
          FlaggedValue.BOTH_EXTREMES,
          day,
          day + length - 1,
          length,
          leastDays,
          "days",
          "equal to the days from " + series.day(earlier) + " on: one of the two runs is a copy");
      day += length - 1;
    }
  }

  private List<Double> run(DaysInTest series, int day) {
    var run = new ArrayList<Double>();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = day; i < day + leastDays; i++) {
      if (Double.isNaN(series.min(i)) || Double.isNaN(series.max(i))) {
        return List.of();
      }
      run.add(series.min(i));
      run.add(series.max(i));
      low = Math.min(low, series.max(i));
      high = Math.max(high, series.max(i));
    }
    return high - low >= leastRangeCelsius ? run : List.of();
  }

  private static boolean same(DaysInTest series, int one, int other) {
    return series.min(one) == series.min(other) && series.max(one) == series.max(other);
  }
}
