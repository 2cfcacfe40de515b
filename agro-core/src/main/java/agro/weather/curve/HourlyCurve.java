package agro.weather.curve;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.TemperatureReadings;
import agro.weather.sun.DayLength;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Temperatures by the clock from daily extremes: the curve of each day runs from the moment of its
 * minimum to that of the next day. Readings made so are a model and no measurement.
 *
 * @param curve how the temperature runs between the extremes
 * @param minimumHour hour of the clock at which a day has its minimum, 0 to below 24; not read when
 *     day lengths are given
 * @param dayLength rule for sunrise, at which the day then has its minimum
 * @param longitudeDegrees degrees east of Greenwich, west negative, to turn sunrise into an hour of
 *     the clock; without it the clock is taken to show local solar time
 * @param step distance of the readings, a divisor of 24 hours
 */
public record HourlyCurve(
    DayCurve curve,
    double minimumHour,
    Optional<DayLength> dayLength,
    OptionalDouble longitudeDegrees,
    Duration step) {

  private static final double HOURS = 24;
  private static final double SECONDS_OF_AN_HOUR = 3600;
  private static final long SECONDS_OF_A_DAY = 86_400;
  private static final long NANOS = 1_000_000_000;

  /**
   * Checks the parts.
   *
   * @throws InputProblem when the curve needs day lengths and has none, the hour is not of a clock,
   *     or the step does not divide the day
   */
  public HourlyCurve {
    Objects.requireNonNull(curve, "curve");
    Objects.requireNonNull(dayLength, "dayLength");
    Objects.requireNonNull(longitudeDegrees, "longitudeDegrees");
    if (curve.needsDayLength() && dayLength.isEmpty()) {
      throw InputProblem.of("the curve \"" + curve.words() + "\" without a latitude")
          .expected("a rule for the day length, for example DayLength.at(Latitude.north(46))")
          .because("the curve runs from sunrise to sunset, which hang on latitude and date")
          .mend("give it with HourlyCurve.fromSunrise");
    }
    if (!(minimumHour >= 0 && minimumHour < HOURS)) {
      throw InputProblem.of("a minimum at " + minimumHour + " h")
          .expected("an hour of the clock, 0 to below 24")
          .because("the curve of a day begins at its minimum")
          .mend("give the usual hour of the minimum, for example 5 for five in the morning");
    }
    long nanos = step.toNanos();
    if (nanos <= 0 || nanos % NANOS != 0 || SECONDS_OF_A_DAY % (nanos / NANOS) != 0) {
      throw InputProblem.of("a step of " + step)
          .expected("whole seconds that divide the day, such as an hour or ten minutes")
          .because("every day then has its readings at the same hours")
          .mend("give for example Duration.ofHours(1)");
    }
  }

  /**
   * Hourly temperatures with the minimum at a fixed hour.
   *
   * @param curve how the temperature runs between the extremes
   * @param minimumHour hour of the clock at which a day has its minimum, 0 to below 24
   * @return the rule
   * @throws InputProblem when the curve needs day lengths or the hour is not of a clock
   */
  public static HourlyCurve of(DayCurve curve, double minimumHour) {
    return new HourlyCurve(
        curve, minimumHour, Optional.empty(), OptionalDouble.empty(), Duration.ofHours(1));
  }

  /**
   * Hourly temperatures with the minimum at sunrise, on a clock that shows local solar time.
   *
   * @param curve how the temperature runs between the extremes
   * @param dayLength day length at the place
   * @return the rule
   */
  public static HourlyCurve fromSunrise(DayCurve curve, DayLength dayLength) {
    return new HourlyCurve(
        curve, 0, Optional.of(dayLength), OptionalDouble.empty(), Duration.ofHours(1));
  }

  /**
   * The same rule with sunrise by the clock of {@link #readings}.
   *
   * @param longitudeDegrees degrees east of Greenwich, west negative, -180 to 180
   * @return a new rule
   */
  public HourlyCurve atLongitude(double longitudeDegrees) {
    return new HourlyCurve(
        curve, minimumHour, dayLength, OptionalDouble.of(longitudeDegrees), step);
  }

  /**
   * The same rule with another distance of the readings.
   *
   * @param other a divisor of 24 hours
   * @return a new rule
   * @throws InputProblem when it does not divide the day
   */
  public HourlyCurve withStep(Duration other) {
    return new HourlyCurve(curve, minimumHour, dayLength, longitudeDegrees, other);
  }

  /**
   * Temperatures at even steps of the clock.
   *
   * <p>Before the first minimum and after 24 hours from the last one there are none, nor on missing
   * days. A curve that needs tomorrow's minimum ends at the day's own where tomorrow is missing.
   *
   * @param days daily extremes
   * @param clock offset of the clock from UTC, at whose midnight days are cut
   * @return readings under the place and medium of the days
   */
  public TemperatureReadings readings(DailyTemperatures days, ZoneOffset clock) {
    int mostReadings =
        Math.toIntExact((days.size() + 2L) * (SECONDS_OF_A_DAY / step.toSeconds()) + 2);
    var moments = new long[mostReadings];
    var celsius = new double[mostReadings];
    int count = 0;
    for (int i = 0; i < days.size(); i++) {
      if (days.originAt(i) == DayOrigin.MISSING) {
        continue;
      }
      var day = curveDay(days, i);
      double begin = minimumSecond(days, i, clock);
      double end =
          i + 1 < days.size() ? minimumSecond(days, i + 1, clock) : begin + SECONDS_OF_A_DAY;
      long moment = firstStepFrom(begin, clock);
      for (; moment < end; moment += step.toSeconds()) {
        double hours = Math.max(0, Math.min(HOURS, (moment - begin) / SECONDS_OF_AN_HOUR));
        moments[count] = moment;
        celsius[count] = curve.celsiusAt(day, hours);
        count++;
      }
    }
    return TemperatureReadings.of(
        days.place(),
        days.medium(),
        clock,
        Arrays.copyOf(moments, count),
        Arrays.copyOf(celsius, count));
  }

  private CurveDay curveDay(DailyTemperatures days, int index) {
    var date = days.day(index);
    var day = CurveDay.of(days.minCelsius(date), days.maxCelsius(date));
    double tomorrow = days.minCelsius(date.plusDays(1));
    var ended = Double.isNaN(tomorrow) ? day : day.withNextMinimum(tomorrow);
    return dayLength.map(rule -> ended.withDayLength(rule.hours(date))).orElse(ended);
  }

  /** Moment of the minimum in seconds since 1970-01-01T00:00Z. */
  private double minimumSecond(DailyTemperatures days, int index, ZoneOffset clock) {
    var date = days.day(index);
    double hour = minimumHour;
    if (dayLength.isPresent()) {
      var light = dayLength.get().daylight(date);
      hour =
          longitudeDegrees.isPresent()
              ? light.sunriseOnClock(longitudeDegrees.getAsDouble(), clock)
              : light.sunriseHour();
    }
    return date.toEpochDay() * SECONDS_OF_A_DAY
        - clock.getTotalSeconds()
        + hour * SECONDS_OF_AN_HOUR;
  }

  private long firstStepFrom(double second, ZoneOffset clock) {
    long seconds = step.toSeconds();
    double local = second + clock.getTotalSeconds();
    return (long) Math.ceil(local / seconds) * seconds - clock.getTotalSeconds();
  }

  @Override
  public String toString() {
    return curve.words()
        + ", minimum at "
        + (dayLength.isPresent() ? "sunrise" : Numbers.plain(minimumHour) + " h");
  }
}
