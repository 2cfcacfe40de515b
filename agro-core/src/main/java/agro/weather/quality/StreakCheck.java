package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;

/**
 * The same minimum or the same maximum day after day; missing days are passed over.
 *
 * @param leastDays fewest days that make a streak, 3 or more
 */
public record StreakCheck(int leastDays) implements QualityCheck, DailyTest {

  /**
   * Checks the limit.
   *
   * @throws InputProblem when it is below 3
   */
  public StreakCheck {
    if (leastDays < 3) {
      throw InputProblem.of("a streak of " + leastDays + " days")
          .expected("3 days or more")
          .because("two equal days are no sign of a fault")
          .mend("give for example 15");
    }
  }

  /**
   * 15 days, the lower end of the 15 to 20 days of the published rule.
   *
   * @return the check
   */
  public static StreakCheck published() {
    return new StreakCheck(15);
  }

  @Override
  public QualityRule rule() {
    return QualityRule.STREAK;
  }

  @Override
  public String limits() {
    return leastDays + " equal days";
  }

  @Override
  public void flag(DaysInTest series) {
    for (var element : DaysInTest.EXTREMES) {
      double[] values = series.all(element);
      int first = -1;
      int last = -1;
      int length = 0;
      for (int day = 0; day <= values.length; day++) {
        if (day < values.length && Double.isNaN(values[day])) {
          continue;
        }
        if (day < values.length && length > 0 && values[day] == values[first]) {
          length++;
          last = day;
          continue;
        }
        if (length >= leastDays) {
          series.fail(
              rule(),
              element,
              first,
              last,
              length,
              leastDays,
              "days",
              "the "
                  + element.words()
                  + " is "
                  + Numbers.plain(values[first])
                  + " °C on every known day: a stuck sensor, or figures that were filled in");
        }
        first = day;
        last = day;
        length = 1;
      }
    }
  }
}
