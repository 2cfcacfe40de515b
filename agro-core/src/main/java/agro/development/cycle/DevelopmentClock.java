package agro.development.cycle;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;

/**
 * Turns the temperatures of days into physiological age: 1 is what a stage takes on the mean, or a
 * sum of degree-days when the ages of its distribution are degree-days.
 */
public sealed interface DevelopmentClock permits DegreeDayClock, RateClock {

  /**
   * Age gained on each day.
   *
   * @param temperatures daily extremes without a missing day
   * @return a new array with one value for each day, 0 or more
   * @throws InputProblem when a day is missing or the temperatures are of another medium
   */
  double[] dailyAges(DailyTemperatures temperatures);

  /**
   * What the clock counts.
   *
   * @return one line
   */
  String words();

  /**
   * Refuses a series with missing days.
   *
   * @param temperatures daily extremes
   * @throws InputProblem when a day is missing
   */
  static void requireWhole(DailyTemperatures temperatures) {
    var missing = temperatures.missingDays();
    if (!missing.isEmpty()) {
      throw InputProblem.of(temperatures.place() + ": no temperatures for " + missing.get(0))
          .expected("extremes for every day of the life cycle")
          .because("a day left out would count as a day without development")
          .mend("fill the gap first, or cut the series before it");
    }
  }
}
