package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;

/**
 * A maximum far above all minima of the day before, the day and the day after, or a minimum far
 * below all their maxima.
 *
 * @param rangeCelsius the range that is too large, in °C, above 0
 */
public record LaggedRangeCheck(double rangeCelsius) implements QualityCheck, DailyTest {

  /**
   * Checks the limit.
   *
   * @throws InputProblem when it is not above zero
   */
  public LaggedRangeCheck {
    if (!(rangeCelsius > 0)) {
      throw InputProblem.of("a range over three days of " + rangeCelsius + " °C")
          .expected("a range above 0 °C")
          .because("every day has a range")
          .mend("give for example 40 °C, the published figure");
    }
  }

  /**
   * 40 °C (Durre and others 2010, from memory).
   *
   * @return the check
   */
  public static LaggedRangeCheck published() {
    return new LaggedRangeCheck(40);
  }

  @Override
  public QualityRule rule() {
    return QualityRule.LAGGED_RANGE;
  }

  @Override
  public String limits() {
    return Numbers.plain(rangeCelsius) + " °C over three days";
  }

  @Override
  public void flag(DaysInTest series) {
    for (int day = 0; day < series.size(); day++) {
      double warmestMinimum = Double.NaN;
      double coldestMaximum = Double.NaN;
      for (int near = day - 1; near <= day + 1; near++) {
        warmestMinimum = known(warmestMinimum, series.min(near), true);
        coldestMaximum = known(coldestMaximum, series.max(near), false);
      }
      note(series, FlaggedValue.MAXIMUM, day, series.max(day) - warmestMinimum);
      note(series, FlaggedValue.MINIMUM, day, coldestMaximum - series.min(day));
    }
  }

  private static double known(double soFar, double next, boolean highest) {
    if (Double.isNaN(soFar) || Double.isNaN(next)) {
      return Double.isNaN(soFar) ? next : soFar;
    }
    return highest ? Math.max(soFar, next) : Math.min(soFar, next);
  }

  private void note(DaysInTest series, FlaggedValue element, int day, double range) {
    if (range >= rangeCelsius) {
      series.note(
          rule(),
          element,
          day,
          day,
          range,
          rangeCelsius,
          "°C",
          "too far from the other extremes of three days: a wrong digit, sign or unit");
    }
  }
}
