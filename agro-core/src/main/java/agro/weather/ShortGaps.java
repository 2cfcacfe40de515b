package agro.weather;

import agro.report.InputProblem;

/** Straight lines over short gaps between two known days, without any judgement of their error. */
public final class ShortGaps {

  private ShortGaps() {}

  /**
   * Fills gaps between two known days on a straight line, the minimum and the maximum each for
   * itself. Longer gaps stay open, and so do gaps at the ends, where there is no second known day.
   *
   * @param series daily extremes
   * @param longestDays longest gap that is filled, in days, 0 or more
   * @return the series with filled days of origin {@link DayOrigin#INTERPOLATED}, taken as exact
   * @throws InputProblem when the longest gap is negative
   */
  public static DailyTemperatures onStraightLines(DailyTemperatures series, int longestDays) {
    requireDays(longestDays);
    var filled = DailyTemperatures.builder(series.firstDay(), series.lastDay());
    series.copyInto(filled, series.firstDay());
    for (var gap : DayRuns.of(series.missingDays())) {
      if (gap.days() <= longestDays && isInside(series, gap)) {
        for (int i = 1; i <= gap.days(); i++) {
          var day = gap.first().plusDays(i - 1L);
          filled.put(
              day,
              between(series, gap, i, Extreme.MINIMUM),
              between(series, gap, i, Extreme.MAXIMUM),
              DayOrigin.INTERPOLATED);
        }
      }
    }
    return filled.build(series.place(), series.medium());
  }

  /**
   * Whether both neighbours of a gap are days of the series.
   *
   * @param series daily extremes
   * @param gap days without temperatures
   * @return true when a day before and a day after the gap are known
   */
  public static boolean isInside(DailyTemperatures series, DayRuns.Run gap) {
    return series.origin(gap.first().minusDays(1)) != DayOrigin.MISSING
        && series.origin(gap.last().plusDays(1)) != DayOrigin.MISSING;
  }

  /**
   * A value on the straight line over a gap.
   *
   * @param series daily extremes
   * @param gap days without temperatures, between two known days
   * @param place place of the day in the gap, 1 for the first
   * @param extreme the minimum or the maximum
   * @return °C
   */
  public static double between(
      DailyTemperatures series, DayRuns.Run gap, int place, Extreme extreme) {
    double before = extreme.of(series, gap.first().minusDays(1));
    double after = extreme.of(series, gap.last().plusDays(1));
    return before + place / (gap.days() + 1.0) * (after - before);
  }

  /**
   * Refuses a negative length of a gap.
   *
   * @param longestDays longest gap that is filled, in days
   * @throws InputProblem when it is negative
   */
  public static void requireDays(int longestDays) {
    if (longestDays < 0) {
      throw InputProblem.of("a longest gap of " + longestDays + " days")
          .expected("0 or more days")
          .because("a gap cannot be shorter than nothing")
          .mend("give 0 to fill nothing, or a few days such as 3");
    }
  }
}
