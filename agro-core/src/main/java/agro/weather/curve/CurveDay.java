package agro.weather.curve;

import agro.report.InputProblem;
import agro.weather.DailyExtremes;

/**
 * What a curve through one day may need to know.
 *
 * @param minCelsius lowest temperature in °C, reached first
 * @param maxCelsius highest temperature in °C, not below the lowest
 * @param nextMinCelsius lowest temperature of the following day in °C; NaN when it is not known
 * @param dayLengthHours hours from sunrise to sunset, 0 to 24; NaN when they are not known
 */
public record CurveDay(
    double minCelsius, double maxCelsius, double nextMinCelsius, double dayLengthHours) {

  private static final double HOURS = 24;

  /**
   * Checks the order of the extremes.
   *
   * @throws InputProblem when the minimum is above the maximum or the day length is not 0 to 24 h
   */
  public CurveDay {
    if (minCelsius > maxCelsius) {
      throw InputProblem.of(
              "a day with minimum " + minCelsius + " °C and maximum " + maxCelsius + " °C")
          .expected("a minimum that is not above the maximum")
          .because("a day cannot be colder at its warmest than at its coldest")
          .mend("look whether the two values are swapped or one is mistyped");
    }
    if (dayLengthHours < 0 || dayLengthHours > HOURS) {
      throw InputProblem.of("a day length of " + dayLengthHours + " h")
          .expected("0 to 24 hours")
          .because("a day has 24 hours")
          .mend("give hours and not minutes, or ask DayLength for them");
    }
  }

  /**
   * A day that ends at its own minimum, of unknown length.
   *
   * @param minCelsius lowest temperature in °C
   * @param maxCelsius highest temperature in °C, not below the lowest
   * @return the day
   * @throws InputProblem when the minimum is above the maximum
   */
  public static CurveDay of(double minCelsius, double maxCelsius) {
    return new CurveDay(minCelsius, maxCelsius, minCelsius, Double.NaN);
  }

  /**
   * A day that ends at its own minimum, of unknown length.
   *
   * @param day the extremes
   * @return the day
   */
  public static CurveDay of(DailyExtremes day) {
    return of(day.minCelsius(), day.maxCelsius());
  }

  /**
   * The same day with the minimum of the day after it.
   *
   * @param celsius lowest temperature of the following day in °C
   * @return a new day
   */
  public CurveDay withNextMinimum(double celsius) {
    return new CurveDay(minCelsius, maxCelsius, celsius, dayLengthHours);
  }

  /**
   * The same day with its length.
   *
   * @param hours hours from sunrise to sunset, 0 to 24
   * @return a new day
   * @throws InputProblem outside that range
   */
  public CurveDay withDayLength(double hours) {
    return new CurveDay(minCelsius, maxCelsius, nextMinCelsius, hours);
  }

  /**
   * Whether the next minimum is above the highest temperature of this day. No one record of
   * temperatures can pass from a day to the next like this; it comes from days that are cut at
   * different hours or from readings that are far apart.
   *
   * @return true when the curve has to be held at the highest temperature
   */
  public boolean nextMinimumIsAboveMaximum() {
    return nextMinCelsius > maxCelsius;
  }

  /**
   * The temperature at which the curve ends: the next minimum, held at the highest temperature of
   * this day.
   *
   * @return °C; NaN when the next minimum is not known
   */
  public double endCelsius() {
    return Math.min(nextMinCelsius, maxCelsius);
  }
}
