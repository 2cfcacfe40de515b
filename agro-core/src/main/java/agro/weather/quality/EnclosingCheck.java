package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.TemperatureReadings;
import java.time.temporal.ChronoUnit;

/**
 * Daily extremes against the readings of the same days: they have to enclose the readings and not
 * to be far outside them.
 *
 * @param toleranceCelsius how far a reading may lie outside the extremes, in °C, 0 or more
 * @param farthestCelsius how far an extreme may lie outside the readings, in °C, above 0
 * @param leastReadings fewest readings of a day that are compared
 */
public record EnclosingCheck(double toleranceCelsius, double farthestCelsius, int leastReadings)
    implements QualityCheck, DailyTest {

  /**
   * Checks the limits.
   *
   * @throws InputProblem when one is out of range
   */
  public EnclosingCheck {
    if (!(toleranceCelsius >= 0) || !(farthestCelsius > 0) || leastReadings < 1) {
      throw InputProblem.of(
              "extremes within " + toleranceCelsius + " and " + farthestCelsius + " °C of readings")
          .expected("a tolerance of 0 °C or more, a distance above 0 °C, at least one reading")
          .because("thermometers differ a little, and extremes fall between readings")
          .mend("give for example 0.5 °C, 3 °C and 20 readings");
    }
  }

  /**
   * Readings up to 0.5 °C outside the extremes pass; extremes up to 3 °C outside 20 or more
   * readings pass (common practice).
   *
   * @return the check
   */
  public static EnclosingCheck usual() {
    return new EnclosingCheck(0.5, 3, 20);
  }

  @Override
  public QualityRule rule() {
    return QualityRule.EXTREMES_AND_READINGS;
  }

  @Override
  public String limits() {
    return "readings at most "
        + Numbers.plain(toleranceCelsius)
        + " °C outside the extremes, extremes at most "
        + Numbers.plain(farthestCelsius)
        + " °C outside "
        + leastReadings
        + " readings or more";
  }

  @Override
  public void flag(DaysInTest series) {
    if (series.readings().isEmpty()) {
      return;
    }
    var readings = series.readings().get();
    int days = series.size();
    var lowest = new double[days];
    var highest = new double[days];
    var count = new int[days];
    collect(readings, series, lowest, highest, count);
    var lag = lag(series, highest, count);
    for (int day = 0; day < days; day++) {
      if (count[day] > 0) {
        compare(series, FlaggedValue.MINIMUM, day, lowest[day] - series.min(day), count[day], lag);
        compare(series, FlaggedValue.MAXIMUM, day, series.max(day) - highest[day], count[day], lag);
      }
    }
  }

  private static void collect(
      TemperatureReadings readings,
      DaysInTest series,
      double[] lowest,
      double[] highest,
      int[] count) {
    for (int i = 0; i < readings.size(); i++) {
      long day = ChronoUnit.DAYS.between(series.day(0), readings.day(i));
      if (day >= 0 && day < count.length) {
        int at = (int) day;
        double celsius = readings.celsius(i);
        lowest[at] = count[at] == 0 ? celsius : Math.min(lowest[at], celsius);
        highest[at] = count[at] == 0 ? celsius : Math.max(highest[at], celsius);
        count[at]++;
      }
    }
  }

  /** How far an extreme lies outside the readings; below zero it lies inside them. */
  private void compare(
      DaysInTest series, FlaggedValue element, int day, double outside, int count, String lag) {
    if (outside < -toleranceCelsius) {
      series.note(
          rule(),
          element,
          day,
          day,
          -outside,
          toleranceCelsius,
          "°C",
          "a reading of the day lies outside the " + element.words() + " of the day" + lag);
    } else if (outside > farthestCelsius && count >= leastReadings) {
      series.note(
          rule(),
          element,
          day,
          day,
          outside,
          farthestCelsius,
          "°C",
          "the " + element.words() + " is far from every reading of the day" + lag);
    }
  }

  /** Says so when the maxima belong to the readings of another day. */
  private String lag(DaysInTest series, double[] highest, int[] count) {
    double best = Double.POSITIVE_INFINITY;
    int bestLag = 0;
    for (int lag : new int[] {0, -1, 1}) {
      double sum = 0;
      int known = 0;
      for (int day = 0; day < count.length; day++) {
        int other = day + lag;
        if (other >= 0
            && other < count.length
            && count[other] >= leastReadings
            && !Double.isNaN(series.max(day))) {
          sum += Math.abs(series.max(day) - highest[other]);
          known++;
        }
      }
      if (known >= 5 && sum / known < 0.5 * best) {
        best = sum / known;
        bestLag = lag;
      }
    }
    if (bestLag == 0) {
      return "";
    }
    return "; the maxima fit the readings of the day "
        + (bestLag < 0 ? "before" : "after")
        + " better";
  }
}
