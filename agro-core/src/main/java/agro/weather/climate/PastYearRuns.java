package agro.weather.climate;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
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

  /**
   * The steps at the seam, where the known days end and each member begins. A past year goes on
   * from its own weather and not from today's, so a step is to be expected; one far beyond the
   * usual change from day to day hints at another place, unit or medium.
   *
   * @param known days that are known, ending on the day before the members begin
   * @return the step of each member
   * @throws InputProblem when the last known day is not the day before the members
   */
  public SeamSteps seam(DailyTemperatures known) {
    return SeamSteps.of(known, this);
  }
}
