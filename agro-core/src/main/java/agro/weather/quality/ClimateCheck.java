package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * A daily extreme far from what is usual around that day of the year, in robust standard deviations
 * (biweight, Lanzante 1996) of all years together.
 *
 * @param standardDeviations distance that is too far, in standard deviations, above 0
 * @param windowDays days around the same day of the year that are taken together, odd
 * @param leastValues fewest values of a window; days with fewer are not checked
 * @param leastStandardDeviationCelsius smallest standard deviation that is believed, in °C
 * @param usual past days of the same place and medium; empty to take the checked series itself
 */
public record ClimateCheck(
    double standardDeviations,
    int windowDays,
    int leastValues,
    double leastStandardDeviationCelsius,
    Optional<DailyTemperatures> usual)
    implements QualityCheck, DailyTest {

  private static final int DAYS_OF_LEAP_YEAR = 366;
  private static final int LEAP_YEAR = 2000;

  /**
   * Checks the limits.
   *
   * @throws InputProblem when one is out of range
   */
  public ClimateCheck {
    if (!(standardDeviations > 0)
        || windowDays < 1
        || windowDays % 2 == 0
        || windowDays > DAYS_OF_LEAP_YEAR / 2
        || leastValues < 10
        || !(leastStandardDeviationCelsius >= 0)) {
      throw InputProblem.of(
              standardDeviations + " standard deviations in a window of " + windowDays + " days")
          .expected("a distance above 0, an odd window of 1 to 183 days, at least 10 values")
          .because("what is usual is told from many days around the same date")
          .mend("give for example 6, 15 and 30");
    }
    usual.ifPresent(
        days -> {
          if (days.size() < leastValues) {
            throw InputProblem.of(days + ": too short to say what is usual")
                .expected("at least two years of days")
                .because("a window needs " + leastValues + " values")
                .mend("give more years");
          }
        });
  }

  /**
   * Six standard deviations in a window of 15 days (checks of GHCN-Daily), from the series itself
   * where a window has 30 values or more; the number of values and the smallest standard deviation
   * of 0.5 °C are ours.
   *
   * @return the check
   */
  public static ClimateCheck published() {
    return new ClimateCheck(6, 15, 30, 0.5, Optional.empty());
  }

  /**
   * The published limits against other days than those of the series itself.
   *
   * @param usual past days of the same place, at least two years
   * @return the check
   */
  public static ClimateCheck against(DailyTemperatures usual) {
    return new ClimateCheck(6, 15, 30, 0.5, Optional.of(usual));
  }

  @Override
  public QualityRule rule() {
    return QualityRule.CLIMATE_OUTLIER;
  }

  @Override
  public String limits() {
    return Numbers.plain(standardDeviations)
        + " standard deviations from the usual of "
        + windowDays
        + " days around the date, from at least "
        + leastValues
        + " values of "
        + usual.map(DailyTemperatures::place).orElse("the series itself");
  }

  @Override
  public void flag(DaysInTest series) {
    usual.ifPresent(days -> days.medium().require(series.medium().kind(), "the usual climate"));
    for (var element : DaysInTest.EXTREMES) {
      var normals = normals(series, element);
      int unchecked = 0;
      for (int day = 0; day < series.size(); day++) {
        double celsius = series.celsius(element, day);
        var normal = normals[dayOfYear(series.day(day))];
        if (normal == null) {
          unchecked += Double.isNaN(celsius) ? 0 : 1;
        } else {
          compare(series, element, day, celsius, normal);
        }
      }
      if (unchecked > 0) {
        series.notChecked(
            rule(),
            unchecked
                + " days, for fewer than "
                + leastValues
                + " values around their dates; give past years with ClimateCheck.against");
      }
    }
  }

  private void compare(
      DaysInTest series, FlaggedValue element, int day, double celsius, Biweight normal) {
    double deviation = Math.max(normal.standardDeviation(), leastStandardDeviationCelsius);
    double score = (celsius - normal.mean()) / deviation;
    if (Math.abs(score) >= standardDeviations) {
      series.fail(
          rule(),
          element,
          day,
          day,
          score,
          Math.signum(score) * standardDeviations,
          "standard deviations",
          Numbers.fixed(celsius, 1)
              + " °C where "
              + Numbers.fixed(normal.mean(), 1)
              + " ± "
              + Numbers.fixed(deviation, 1)
              + " °C is usual");
    }
  }

  /** Mean and spread by day of the year, null where there are too few values. */
  private Biweight[] normals(DaysInTest series, FlaggedValue element) {
    var first = usual.map(DailyTemperatures::firstDay).orElse(series.day(0));
    double[] values = usual.map(days -> observed(days, element)).orElse(series.all(element));
    int years = values.length / 365 + 2;
    var byDay = new double[DAYS_OF_LEAP_YEAR][years];
    var counts = new int[DAYS_OF_LEAP_YEAR];
    for (int i = 0; i < values.length; i++) {
      int day = dayOfYear(first.plusDays(i));
      if (!Double.isNaN(values[i])) {
        byDay[day][counts[day]++] = values[i];
      }
    }
    var normals = new Biweight[DAYS_OF_LEAP_YEAR];
    var window = new double[windowDays * years];
    for (int day = 0; day < DAYS_OF_LEAP_YEAR; day++) {
      int count = 0;
      for (int shift = -(windowDays / 2); shift <= windowDays / 2; shift++) {
        int near = Math.floorMod(day + shift, DAYS_OF_LEAP_YEAR);
        System.arraycopy(byDay[near], 0, window, count, counts[near]);
        count += counts[near];
      }
      if (count >= leastValues) {
        normals[day] = Biweight.of(java.util.Arrays.copyOf(window, count));
      }
    }
    return normals;
  }

  private static double[] observed(DailyTemperatures days, FlaggedValue element) {
    double[] values = element == FlaggedValue.MINIMUM ? days.minimaCelsius() : days.maximaCelsius();
    for (int i = 0; i < values.length; i++) {
      values[i] = days.originAt(i) == DayOrigin.OBSERVED ? values[i] : Double.NaN;
    }
    return values;
  }

  /** Day of a leap year counted from 0, so that 1 March is the same day in every year. */
  private static int dayOfYear(LocalDate day) {
    return (int) ChronoUnit.DAYS.between(LocalDate.of(LEAP_YEAR, 1, 1), day.withYear(LEAP_YEAR));
  }
}
