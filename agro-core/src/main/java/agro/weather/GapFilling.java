package agro.weather;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;

/** Filling of short gaps in a daily series. */
public final class GapFilling {

  private GapFilling() {}

  /**
   * A series after filling, with the report of what was filled and what was left.
   *
   * @param daily the series; filled days have origin {@link DayOrigin#INTERPOLATED}
   * @param report each gap that was filled or left open
   */
  public record Filled(DailyTemperatures daily, ReadReport report) {}

  /**
   * Fills gaps between two known days on a straight line, the minimum and the maximum each for
   * itself. Longer gaps stay open, for a straight line through a week of weather is a guess; so do
   * gaps at the ends, where there is no second known day.
   *
   * @param series daily extremes
   * @param longestDays longest gap that is filled, in days, 0 or more
   * @return the filled series and what was done
   * @throws InputProblem when the longest gap is negative
   */
  public static Filled interpolateShortGaps(DailyTemperatures series, int longestDays) {
    if (longestDays < 0) {
      throw InputProblem.of("a longest gap of " + longestDays + " days")
          .expected("0 or more days")
          .because("a gap cannot be shorter than nothing")
          .mend("give 0 to fill nothing, or a few days such as 3");
    }
    var filled = new DailyTemperatures.Builder(series.firstDay(), series.lastDay());
    var collector = new ReadReport.Collector(series.place());
    series.copyInto(filled, series.firstDay());
    for (var gap : DayRuns.of(series.missingDays())) {
      if (gap.days() <= longestDays && isInside(series, gap)) {
        interpolate(series, gap, filled);
        collector.add(
            Deed.FILLED,
            SourceLocation.NONE,
            gap.words() + ": extremes on a straight line between the days before and after");
      } else {
        collector.add(
            Deed.NOTED, SourceLocation.NONE, gap.words() + ": no temperatures, left open");
      }
    }
    return new Filled(filled.build(series.place(), series.medium()), collector.report());
  }

  private static boolean isInside(DailyTemperatures series, DayRuns.Run gap) {
    return gap.first().isAfter(series.firstDay()) && gap.last().isBefore(series.lastDay());
  }

  private static void interpolate(
      DailyTemperatures series, DayRuns.Run gap, DailyTemperatures.Builder filled) {
    var before = gap.first().minusDays(1);
    var after = gap.last().plusDays(1);
    for (int i = 1; i <= gap.days(); i++) {
      double share = i / (gap.days() + 1.0);
      filled.put(
          before.plusDays(i),
          between(series.minCelsius(before), series.minCelsius(after), share),
          between(series.maxCelsius(before), series.maxCelsius(after), share),
          DayOrigin.INTERPOLATED);
    }
  }

  private static double between(double before, double after, double share) {
    return before + share * (after - before);
  }
}
