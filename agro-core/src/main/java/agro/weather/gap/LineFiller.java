package agro.weather.gap;

import agro.weather.DailyTemperatures;
import agro.weather.DayRuns;
import agro.weather.Extreme;
import agro.weather.ShortGaps;
import java.util.ArrayList;

/** Fills short gaps on straight lines. */
final class LineFiller implements GapFiller {

  private final DailyTemperatures series;
  private final int longestDays;
  private final LeaveOut leaveOut;

  LineFiller(DailyTemperatures series, int longestDays) {
    this.series = series;
    this.longestDays = longestDays;
    leaveOut = new LeaveOut(series);
  }

  @Override
  public GapMethod method() {
    return GapMethod.STRAIGHT_LINE;
  }

  @Override
  public Proposal propose(DayRuns.Run gap) {
    if (gap.days() > longestDays) {
      return Proposal.refused(
          "longer than the "
              + longestDays
              + (longestDays == 1 ? " day" : " days")
              + " allowed for a straight line");
    }
    if (!ShortGaps.isInside(series, gap)) {
      return Proposal.refused("at an end of the series, where a straight line has no second day");
    }
    var errors = leaveOut.errors(gap);
    var days = new ArrayList<DayFill>();
    for (int i = 1; i <= gap.days(); i++) {
      days.add(
          new DayFill(
              ShortGaps.between(series, gap, i, Extreme.MINIMUM),
              ShortGaps.between(series, gap, i, Extreme.MAXIMUM),
              errors.minError(i - 1),
              errors.maxError(i - 1)));
    }
    return new Proposal(days, errors.correlation(), errors.words(), "");
  }
}
