package agro.weather;

import agro.report.ReadReport;
import java.util.List;

/**
 * Past years' weather, moved to the days of a forecast.
 *
 * @param years calendar year in which each run begins, ascending
 * @param members the runs, one for each year, all on the target days with origin {@link
 *     DayOrigin#PAST_YEAR}
 * @param report years that were left out and days that were interpolated
 */
public record PastYearRuns(
    List<Integer> years, List<DailyTemperatures> members, ReadReport report) {

  /** Makes the lists immutable and checks that they belong together. */
  public PastYearRuns {
    years = List.copyOf(years);
    members = List.copyOf(members);
    if (years.size() != members.size()) {
      throw new IllegalArgumentException(
          years.size() + " years for " + members.size() + " members");
    }
  }
}
