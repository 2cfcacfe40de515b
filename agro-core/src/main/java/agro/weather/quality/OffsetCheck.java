package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;

/**
 * A shift of the difference from a neighbour, from one day on: a sensor that was replaced, moved or
 * lost its shield. The statistic is that of Alexandersson's standard normal homogeneity test for a
 * shift in the middle of a moving window; a slow change of the difference with the season does not
 * raise it. A shift smaller than the weather cannot be told without a neighbour.
 *
 * @param neighbour daily extremes of a neighbour in the same kind of medium
 * @param leastShiftCelsius least shift, in °C, above 0
 * @param leastStatistic least value of the statistic, which cannot pass the days of the window
 * @param halfWindowDays known days before and after the shift that are compared, 10 or more
 */
public record OffsetCheck(
    DailyTemperatures neighbour,
    double leastShiftCelsius,
    double leastStatistic,
    int halfWindowDays)
    implements QualityCheck, DailyTest {

  /**
   * Checks the limits.
   *
   * @throws InputProblem when one is out of range
   */
  public OffsetCheck {
    if (!(leastShiftCelsius > 0)
        || halfWindowDays < 10
        || !(leastStatistic > 0 && leastStatistic < 2 * halfWindowDays)) {
      throw InputProblem.of(
              "a shift of "
                  + leastShiftCelsius
                  + " °C with a statistic of "
                  + leastStatistic
                  + " over "
                  + halfWindowDays
                  + " days on either side")
          .expected(
              "a shift above 0 °C, at least 10 days, and a statistic below twice their number")
          .because("a shift is told from many days before and after it")
          .mend("take OffsetCheck.against(neighbour)");
    }
  }

  /**
   * A shift of 1.5 °C with a statistic of 20 over 30 days on either side. The published 95 % limit
   * for 60 independent values is about 8.6 (from memory); ours is stricter, because the difference
   * of one day resembles that of the next.
   *
   * @param neighbour daily extremes of a neighbour
   * @return the check
   */
  public static OffsetCheck against(DailyTemperatures neighbour) {
    return new OffsetCheck(neighbour, 1.5, 20, 30);
  }

  @Override
  public QualityRule rule() {
    return QualityRule.OFFSET;
  }

  @Override
  public String limits() {
    return "a shift of "
        + Numbers.plain(leastShiftCelsius)
        + " °C against "
        + neighbour.place()
        + " with a statistic of "
        + Numbers.plain(leastStatistic)
        + " over "
        + halfWindowDays
        + " days on either side";
  }

  @Override
  public void flag(DaysInTest series) {
    neighbour.medium().require(series.medium().kind(), "the offset check");
    for (var element : DaysInTest.EXTREMES) {
      double[] other = NeighbourCheck.aligned(neighbour, series, element);
      var days = new int[other.length];
      var differences = new double[other.length];
      int known = 0;
      for (int day = 0; day < other.length; day++) {
        double difference = series.celsius(element, day) - other[day];
        if (!Double.isNaN(difference)) {
          days[known] = day;
          differences[known++] = difference;
        }
      }
      if (known < 2 * halfWindowDays) {
        series.notChecked(rule(), "fewer than " + 2 * halfWindowDays + " common days");
        continue;
      }
      find(series, element, days, differences, known);
    }
  }

  private void find(
      DaysInTest series, FlaggedValue element, int[] days, double[] differences, int known) {
    int open = -1;
    double openShift = 0;
    double openStatistic = 0;
    for (int at = halfWindowDays; at <= known - halfWindowDays; at++) {
      double statistic = statistic(differences, at);
      if (!isPeak(differences, at, known, statistic)) {
        continue;
      }
      double shift =
          mean(differences, at, at + halfWindowDays) - mean(differences, at - halfWindowDays, at);
      boolean back = open >= 0 && Math.abs(openShift + shift) < 0.5 * Math.abs(openShift);
      if (open >= 0) {
        raise(series, element, days[open], days[at] - 1, openShift, openStatistic);
      }
      open = back ? -1 : at;
      openShift = shift;
      openStatistic = statistic;
    }
    if (open >= 0) {
      raise(series, element, days[open], series.size() - 1, openShift, openStatistic);
    }
  }

  private boolean isPeak(double[] differences, int at, int known, double statistic) {
    if (statistic < leastStatistic
        || Math.abs(
                mean(differences, at, at + halfWindowDays)
                    - mean(differences, at - halfWindowDays, at))
            < leastShiftCelsius) {
      return false;
    }
    int from = Math.max(halfWindowDays, at - halfWindowDays);
    int to = Math.min(known - halfWindowDays, at + halfWindowDays);
    for (int near = from; near <= to; near++) {
      double other = statistic(differences, near);
      if (other > statistic || (other == statistic && near < at)) {
        return false;
      }
    }
    return true;
  }

  /** T = m (z1² + z2²) for the means of both halves of the standardised window. */
  private double statistic(double[] differences, int at) {
    int from = at - halfWindowDays;
    int to = at + halfWindowDays;
    double mean = mean(differences, from, to);
    double squares = 0;
    for (int i = from; i < to; i++) {
      squares += (differences[i] - mean) * (differences[i] - mean);
    }
    double variance = squares / (to - from - 1);
    double before = mean(differences, from, at) - mean;
    double after = mean(differences, at, to) - mean;
    return variance > 0 ? halfWindowDays * (before * before + after * after) / variance : 0;
  }

  private static double mean(double[] values, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += values[i];
    }
    return sum / (to - from);
  }

  private void raise(
      DaysInTest series,
      FlaggedValue element,
      int first,
      int last,
      double shift,
      double statistic) {
    series.note(
        rule(),
        element,
        first,
        last,
        shift,
        Math.signum(shift) * leastShiftCelsius,
        "°C",
        "from here on "
            + Numbers.fixed(Math.abs(shift), 1)
            + (shift > 0 ? " °C warmer" : " °C colder")
            + " against "
            + neighbour.place()
            + " than before (statistic "
            + Numbers.fixed(statistic, 0)
            + "): a sensor replaced, moved or without its shield, here or there");
  }
}
