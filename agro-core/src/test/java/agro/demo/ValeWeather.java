package agro.demo;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The weather that all places of the vale share, hour by hour in standard time (UTC+1) from the
 * first day of 2011 to the last of 2026: a seasonal cycle, weather that passes in days, spells of
 * weeks, years that are warm or cool, clouds that flatten the day, and a day that warms fast and
 * cools slowly.
 */
final class ValeWeather {
  static final LocalDate FIRST_DAY = LocalDate.of(2011, 1, 1);
  static final LocalDate LAST_DAY = LocalDate.of(2026, 12, 31);
  static final int DAYS = dayIndex(LAST_DAY) + 1;
  static final int HOURS = DAYS * 24;

  private static final double YEAR_LENGTH = 365.25;
  private static final double WARMEST_HOUR = 14.5;

  /**
   * How much faster the air cools after its peak than before dawn, on a log scale. The mean of a
   * summer day then lies about half a degree below the middle of its extremes.
   */
  private static final double COOLING = 1.3;

  /** Temperature without the daily course, °C, hour by hour. */
  final double[] level = new double[HOURS];

  /** The daily course, zero on average, °C, hour by hour. */
  final double[] course = new double[HOURS];

  /** Mean wind of the evening, m/s, day by day. */
  final double[] wind = new double[DAYS];

  private final double[] clearness = new double[DAYS];

  ValeWeather(long seed) {
    drawClouds(Draws.of(seed, "clouds"));
    drawWind(Draws.of(seed, "wind"));
    drawLevel(seed);
    shapeCourse();
  }

  static int dayIndex(LocalDate day) {
    return (int) ChronoUnit.DAYS.between(FIRST_DAY, day);
  }

  private static double seasonal(double dayOfYear, double peakDay) {
    return StrictMath.cos(2 * Math.PI * (dayOfYear - peakDay) / YEAR_LENGTH);
  }

  private void drawClouds(Draws draws) {
    var state = new Lagged(2.0, 1.3, draws);
    for (int day = 0; day < DAYS; day++) {
      clearness[day] = 1 / (1 + StrictMath.exp(-state.next()));
    }
  }

  private void drawWind(Draws draws) {
    var state = new Lagged(1.5, 0.55, draws);
    for (int day = 0; day < DAYS; day++) {
      wind[day] = 2.4 * StrictMath.exp(state.next());
    }
  }

  private void drawLevel(long seed) {
    var fronts = new Lagged(60, 2.5, Draws.of(seed, "fronts"));
    var spells = new Lagged(30, 0.8, Draws.of(seed, "spells"));
    var years = Draws.of(seed, "years");
    double smoothed = 0;
    double yearShift = 0;
    for (int day = 0; day < DAYS; day++) {
      var date = FIRST_DAY.plusDays(day);
      int dayOfYear = date.getDayOfYear();
      if (dayOfYear == 1) {
        yearShift = 0.35 * years.gaussian();
      }
      double summer = seasonal(dayOfYear, 201);
      double sun = 2.2 * summer * (clearness[day] - 0.5);
      double daily = 8.3 + 9.5 * summer + yearShift + spells.next() + sun;
      double strength = 1 - 0.2 * summer;
      for (int hour = 0; hour < 24; hour++) {
        smoothed += 0.25 * (fronts.next() - smoothed);
        level[day * 24 + hour] = daily + strength * smoothed;
      }
    }
    smoothSeams();
  }

  /** The daily terms step at midnight; each seam is drawn out over the six hours around it. */
  private void smoothSeams() {
    for (int day = 1; day < DAYS; day++) {
      int midnight = day * 24;
      double step = level[midnight] - level[midnight - 1];
      for (int i = 1; i <= 6; i++) {
        level[midnight - i] += step * 0.5 * (7 - i) / 7.0;
        level[midnight + i - 1] -= step * 0.5 * (7 - i) / 7.0;
      }
    }
  }

  private void shapeCourse() {
    for (int day = 0; day < DAYS; day++) {
      double summer = seasonal(FIRST_DAY.plusDays(day).getDayOfYear(), 172);
      double sunrise = 6 - 1.75 * summer;
      double strength = 0.78 + 0.27 * summer;
      double sum = 0;
      for (int hour = 0; hour < 24; hour++) {
        int at = day * 24 + hour;
        course[at] = strength * halfRange(day, hour) * shape(hour, sunrise);
        sum += course[at];
      }
      for (int hour = 0; hour < 24; hour++) {
        course[day * 24 + hour] -= sum / 24;
      }
    }
  }

  /** Half the daily range, gliding from noon to noon. */
  private double halfRange(int day, int hour) {
    int other = Math.min(DAYS - 1, Math.max(0, hour < 12 ? day - 1 : day + 1));
    double share = Math.abs(hour - 12) / 24.0;
    double clear = (1 - share) * clearness[day] + share * clearness[other];
    return 1.2 + 7.0 * clear;
  }

  /** From -1 at sunrise fast to 1 in the afternoon, then slowly down to the next sunrise. */
  private static double shape(int hour, double sunrise) {
    if (hour >= sunrise && hour <= WARMEST_HOUR) {
      return -StrictMath.cos(Math.PI * (hour - sunrise) / (WARMEST_HOUR - sunrise));
    }
    double sincePeak = hour > WARMEST_HOUR ? hour - WARMEST_HOUR : hour + 24 - WARMEST_HOUR;
    double run = sincePeak / (24 - WARMEST_HOUR + sunrise);
    double end = StrictMath.exp(-COOLING);
    return 2 * (StrictMath.exp(-COOLING * run) - end) / (1 - end) - 1;
  }

  /** A series in which each value remembers the one before: first-order autoregression. */
  static final class Lagged {
    private final double memory;
    private final double shock;
    private final Draws draws;
    private double value;

    /**
     * Memory fades with the given number of steps; the values have the given standard deviation.
     */
    Lagged(double steps, double deviation, Draws draws) {
      memory = StrictMath.exp(-1 / steps);
      shock = deviation * StrictMath.sqrt(1 - memory * memory);
      this.draws = draws;
      value = deviation * draws.gaussian();
    }

    double next() {
      value = memory * value + shock * draws.gaussian();
      return value;
    }
  }
}
