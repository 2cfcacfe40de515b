package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.time.Duration;

/**
 * A stretch of degrees Fahrenheit inside a log in °C: a jump that vanishes when the readings after
 * it are read as °F, up to a jump back of the same kind. Daily extremes have to jump both, and a
 * stretch may be a single day.
 *
 * @param leastJumpCelsius least jump in °C, above 0
 * @param farthest longest time between the readings on both sides of the jump
 * @param leastReadings fewest readings of a stretch; fewer are left to the rule on spikes
 */
public record FahrenheitCheck(double leastJumpCelsius, Duration farthest, int leastReadings)
    implements QualityCheck, ReadingsTest, DailyTest {

  /** A jump has to shrink to this share of itself when the readings are taken as °F. */
  private static final double SHRINKS_TO = 1.0 / 3;

  /** A day of less range in °C says nothing, for both extremes may stand for missing. */
  private static final double LEAST_RANGE = 0.1;

  /** Days on both sides of a jump may be this far apart. */
  private static final int MOST_DAYS_APART = 3;

  /**
   * Checks the limits.
   *
   * @throws InputProblem when one is not above zero
   */
  public FahrenheitCheck {
    if (!(leastJumpCelsius > 0) || farthest.isNegative() || leastReadings < 1) {
      throw InputProblem.of(
              "a jump of " + leastJumpCelsius + " °C before " + leastReadings + " readings in °F")
          .expected("a jump above 0 °C and at least one reading")
          .because("degrees Celsius and Fahrenheit of usual weather are far apart")
          .mend("give for example 12 °C and 4 readings");
    }
  }

  /**
   * A jump of 12 °C or more between readings up to 6 hours apart, for 4 readings or more (common
   * practice).
   *
   * @return the check
   */
  public static FahrenheitCheck usual() {
    return new FahrenheitCheck(12, Duration.ofHours(6), 4);
  }

  @Override
  public QualityRule rule() {
    return QualityRule.FAHRENHEIT;
  }

  @Override
  public String limits() {
    return "a jump of "
        + Numbers.plain(leastJumpCelsius)
        + " °C or more that vanishes in °F, for at least "
        + leastReadings
        + " readings";
  }

  private static double fromFahrenheit(double value) {
    return (value - 32) / 1.8;
  }

  @Override
  public void flag(ReadingsInTest series) {
    int from = -1;
    boolean boundarySeen = false;
    for (int i = 1; i < series.size(); i++) {
      if (series.second(i) - series.second(i - 1) > farthest.toSeconds()) {
        continue;
      }
      double before = series.celsius(i - 1);
      double after = series.celsius(i);
      if (from < 0 && vanishes(before, after, before, fromFahrenheit(after))) {
        from = i;
        boundarySeen = true;
      } else if (vanishes(before, after, fromFahrenheit(before), after)) {
        if (from >= 0 || !boundarySeen) {
          raise(series, Math.max(from, 0), i - 1);
        }
        from = -1;
        boundarySeen = true;
      }
    }
    if (from >= 0) {
      raise(series, from, series.size() - 1);
    }
  }

  private boolean vanishes(double before, double after, double readBefore, double readAfter) {
    double jump = Math.abs(after - before);
    double rest = Math.abs(readAfter - readBefore);
    return jump >= leastJumpCelsius && rest <= Math.min(SHRINKS_TO * jump, leastJumpCelsius / 2);
  }

  private void raise(ReadingsInTest series, int first, int last) {
    if (last - first + 1 < leastReadings) {
      return;
    }
    int edge = first > 0 ? first : last;
    int other = first > 0 ? first - 1 : last + 1;
    series.fail(
        rule(),
        first,
        last,
        series.celsius(edge) - series.celsius(other),
        leastJumpCelsius,
        "°C",
        "joins on to the rest only when read as °F ("
            + Numbers.fixed(series.celsius(edge), 1)
            + " °F is "
            + Numbers.fixed(fromFahrenheit(series.celsius(edge)), 1)
            + " °C): the logger was set to °F for a while");
  }

  @Override
  public void flag(DaysInTest series) {
    int from = -1;
    int last = -1;
    boolean boundarySeen = false;
    for (int day = 0; day < series.size(); day++) {
      if (!(series.max(day) - series.min(day) > LEAST_RANGE)) {
        continue;
      }
      boolean joined = last >= 0 && day - last <= MOST_DAYS_APART;
      if (from < 0 && joined && bothVanish(series, last, day, true)) {
        from = day;
        boundarySeen = true;
      } else if (joined && bothVanish(series, last, day, false)) {
        if (from >= 0 || !boundarySeen) {
          raise(series, Math.max(from, 0), last);
        }
        from = -1;
        boundarySeen = true;
      }
      last = day;
    }
    if (from >= 0) {
      raise(series, from, last);
    }
  }

  /** Whether minimum and maximum both jump, and hardly do so with one day read as °F. */
  private boolean bothVanish(DaysInTest series, int before, int after, boolean laterInFahrenheit) {
    for (var element : DaysInTest.EXTREMES) {
      double one = series.celsius(element, before);
      double other = series.celsius(element, after);
      double jump = Math.abs(other - one);
      double rest =
          laterInFahrenheit
              ? Math.abs(fromFahrenheit(other) - one)
              : Math.abs(other - fromFahrenheit(one));
      if (jump < leastJumpCelsius || rest > SHRINKS_TO * jump) {
        return false;
      }
    }
    return true;
  }

  private void raise(DaysInTest series, int first, int last) {
    int edge = first > 0 ? first : last;
    int other = first > 0 ? first - 1 : last + 1;
    series.fail(
        rule(),
        FlaggedValue.BOTH_EXTREMES,
        first,
        last,
        series.max(edge) - series.max(other),
        leastJumpCelsius,
        "°C",
        "join on to the days around them only when read as °F: written in °F for a while");
  }
}
