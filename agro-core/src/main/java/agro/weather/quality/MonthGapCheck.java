package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Values of a calendar month, all years together, that are set apart from the others by a gap.
 *
 * @param gapCelsius the gap in °C, above 0
 * @param leastValues fewest values of a month that are looked at
 */
public record MonthGapCheck(double gapCelsius, int leastValues) implements QualityCheck, DailyTest {

  /**
   * Checks the limits.
   *
   * @throws InputProblem when one is out of range
   */
  public MonthGapCheck {
    if (!(gapCelsius > 0) || leastValues < 10) {
      throw InputProblem.of("a gap of " + gapCelsius + " °C among " + leastValues + " values")
          .expected("a gap above 0 °C and at least 10 values")
          .because("a few days lie far apart by chance")
          .mend("give for example 10 °C, the published figure, and 20 values");
    }
  }

  /**
   * A gap of 10 °C, in months of at least 20 values (the number of values is ours).
   *
   * @return the check
   */
  public static MonthGapCheck published() {
    return new MonthGapCheck(10, 20);
  }

  @Override
  public QualityRule rule() {
    return QualityRule.MONTH_GAP;
  }

  @Override
  public String limits() {
    return "a gap of "
        + Numbers.plain(gapCelsius)
        + " °C in a month of at least "
        + leastValues
        + " values";
  }

  @Override
  public void flag(DaysInTest series) {
    for (var element : DaysInTest.EXTREMES) {
      for (int month = 1; month <= 12; month++) {
        var days = new ArrayList<Integer>();
        for (int day = 0; day < series.size(); day++) {
          if (series.day(day).getMonthValue() == month
              && !Double.isNaN(series.celsius(element, day))) {
            days.add(day);
          }
        }
        if (days.size() >= leastValues) {
          days.sort(Comparator.comparingDouble(day -> series.celsius(element, day)));
          outwards(series, element, days, 1);
          outwards(series, element, days, -1);
        }
      }
    }
  }

  /** Walks from the median to one end and flags all beyond a gap. */
  private void outwards(
      DaysInTest series, FlaggedValue element, List<Integer> days, int direction) {
    double gap = Double.NaN;
    double before = series.celsius(element, days.get(days.size() / 2));
    for (int i = days.size() / 2; i >= 0 && i < days.size(); i += direction) {
      int day = days.get(i);
      double celsius = series.celsius(element, day);
      if (Double.isNaN(gap) && Math.abs(celsius - before) >= gapCelsius) {
        gap = celsius - before;
      }
      before = celsius;
      if (!Double.isNaN(gap)) {
        series.fail(
            rule(),
            element,
            day,
            day,
            gap,
            Math.signum(gap) * gapCelsius,
            "°C",
            "set apart from all other days of the month by a gap");
      }
    }
  }
}
