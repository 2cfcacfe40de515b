package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.MediumKind;

/**
 * Days whose warmest hour lies elsewhere than in the rest of the log, and a log whose warmest hour
 * is odd altogether. The warmest hour is the peak of the first harmonic of the day, summed over a
 * window of days so that clear days count most.
 *
 * @param leastHours least shift from the log's usual hour, in hours, above 0 to 12
 * @param windowDays days that are taken together, odd, 5 or more
 * @param earliestHour earliest usual peak of the first harmonic in air, hour of the day
 * @param latestHour latest usual peak in air, hour of the day
 */
public record ClockCheck(double leastHours, int windowDays, double earliestHour, double latestHour)
    implements QualityCheck, ReadingsTest {

  /**
   * Checks the limits.
   *
   * @throws InputProblem when a limit is out of range
   */
  public ClockCheck {
    if (!(leastHours > 0 && leastHours <= 12)
        || windowDays < 5
        || windowDays % 2 == 0
        || !(earliestHour >= 0 && earliestHour < latestHour && latestHour <= 24)) {
      throw InputProblem.of("a shift of " + leastHours + " h in " + windowDays + " days")
          .expected(
              "a shift above 0 and up to 12 h, an odd number of at least 5 days, and hours of"
                  + " the day in order")
          .because("the weather of a few days moves the warmest hour too")
          .mend("take ClockCheck.usual()");
    }
  }

  /**
   * Two hours off, in windows of 11 days; a peak between 11 and 19 h is usual in air (common
   * practice).
   *
   * @return the check
   */
  public static ClockCheck usual() {
    return new ClockCheck(2, 11, 11, 19);
  }

  @Override
  public QualityRule rule() {
    return QualityRule.CLOCK;
  }

  @Override
  public String limits() {
    return Numbers.plain(leastHours)
        + " h off the usual warmest hour over "
        + windowDays
        + " days; usual in air "
        + Numbers.plain(earliestHour)
        + " to "
        + Numbers.plain(latestHour)
        + " h";
  }

  @Override
  public void flag(ReadingsInTest series) {
    var days = DailyHarmonics.of(series);
    int half = windowDays / 2;
    double[] peaks = days.windowPeaks(half);
    double usual = DailyHarmonics.commonHour(peaks);
    if (Double.isNaN(usual)) {
      series.notChecked(rule(), "no " + windowDays + " days with a daily wave");
      return;
    }
    if (series.medium().kind() == MediumKind.AIR && (usual < earliestHour || usual > latestHour)) {
      series.note(
          rule(),
          0,
          series.size() - 1,
          usual,
          usual < earliestHour ? earliestHour : latestHour,
          "h",
          "the whole log is warmest at "
              + Numbers.fixed(usual, 1)
              + " h: a clock in another zone, day and night swapped, or days cut at another offset");
    }
    for (int day = 0; day < peaks.length; ) {
      double shift = DailyHarmonics.difference(peaks[day], usual);
      int end = day + 1;
      if (Math.abs(shift) > leastHours) {
        while (end < peaks.length
            && Math.abs(DailyHarmonics.difference(peaks[end], usual)) > leastHours) {
          end++;
        }
        raise(series, days, usual, day, end - 1);
      }
      day = end;
    }
  }

  private void raise(
      ReadingsInTest series, DailyHarmonics days, double usual, int fromDay, int toDay) {
    int half = windowDays / 2;
    double shifted = days.peak(fromDay, toDay);
    int first = days.firstBetter(fromDay - half, fromDay + half, usual, shifted);
    int last =
        days.lastWithReadings(
            days.firstBetter(Math.max(first + 1, toDay - half), toDay + half, shifted, usual) - 1);
    if (last - first + 1 < half) {
      return;
    }
    double shift = DailyHarmonics.difference(days.peak(first, last), usual);
    series.note(
        rule(),
        days.firstPlace(first),
        days.lastPlace(last),
        shift,
        Math.signum(shift) * leastHours,
        "h",
        "warmest "
            + Numbers.fixed(Math.abs(shift), 1)
            + (shift > 0 ? " h later" : " h earlier")
            + " than in the rest of the log: the clock was set "
            + (shift > 0 ? "forward" : "back")
            + ", here or in the rest");
  }
}
