package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;

/**
 * A minimum or maximum that stands off those of the day before and the day after to the same side.
 *
 * @param standoffCelsius distance from both in °C, above 0
 */
public record DailySpikeCheck(double standoffCelsius) implements QualityCheck, DailyTest {

  /**
   * Checks the limit.
   *
   * @throws InputProblem when it is not above zero
   */
  public DailySpikeCheck {
    if (!(standoffCelsius > 0)) {
      throw InputProblem.of("a spike of " + standoffCelsius + " °C")
          .expected("a distance above 0 °C")
          .because("every day differs a little from the next")
          .mend("give for example 25 °C, the published figure");
    }
  }

  /**
   * 25 °C (Durre and others 2010, from memory).
   *
   * @return the check
   */
  public static DailySpikeCheck published() {
    return new DailySpikeCheck(25);
  }

  @Override
  public QualityRule rule() {
    return QualityRule.DAILY_SPIKE;
  }

  @Override
  public String limits() {
    return Numbers.plain(standoffCelsius) + " °C off the day before and the day after";
  }

  @Override
  public void flag(DaysInTest series) {
    for (var element : DaysInTest.EXTREMES) {
      double[] values = series.all(element);
      for (int day = 1; day < values.length - 1; day++) {
        double up = Math.min(values[day] - values[day - 1], values[day] - values[day + 1]);
        double down = Math.min(values[day - 1] - values[day], values[day + 1] - values[day]);
        if (up >= standoffCelsius || down >= standoffCelsius) {
          series.fail(
              rule(),
              element,
              day,
              day,
              up > 0 ? up : -down,
              up > 0 ? standoffCelsius : -standoffCelsius,
              "°C",
              "stands off the days before and after: a wrong digit, sign or unit");
        }
      }
    }
  }
}
