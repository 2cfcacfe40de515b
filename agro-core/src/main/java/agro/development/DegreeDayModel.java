package agro.development;

import agro.report.InputProblem;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.curve.CurveDay;
import agro.weather.sun.DayLength;
import agro.working.Working;
import java.util.Objects;
import java.util.Optional;

/**
 * A rule that turns the temperatures of a day into degree-days: a method, thresholds, and what
 * happens above the upper one. Six cases follow from where the thresholds lie: the day wholly below
 * the lower threshold, wholly above the upper one, wholly between them, crossing the lower one,
 * crossing the upper one, or crossing both; the closed forms of {@link DegreeDayMethod} and the
 * rules of {@link UpperCutoff} give one formula for all of them.
 *
 * @param method how degree-days are found from what is known of the day
 * @param thresholds lower and, where the cutoff needs it, upper threshold; an upper threshold is
 *     not used by {@link UpperCutoff#NONE}
 * @param cutoff rule above the upper threshold
 * @param dayLength rule for the hours from sunrise to sunset, for a method that needs them
 */
public record DegreeDayModel(
    DegreeDayMethod method,
    Thresholds thresholds,
    UpperCutoff cutoff,
    Optional<DayLength> dayLength) {

  /**
   * Checks that the parts fit each other.
   *
   * @throws InputProblem when a cutoff is asked for without an upper threshold, when the method has
   *     no meaning for the cutoff, or when the method needs day lengths and none are given
   */
  public DegreeDayModel {
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(thresholds, "thresholds");
    Objects.requireNonNull(cutoff, "cutoff");
    Objects.requireNonNull(dayLength, "dayLength");
    if (!method.allows(cutoff)) {
      throw method.withoutMoments("a degree-day model with cutoff " + cutoff);
    }
    if (cutoff.needsUpperThreshold() && thresholds.upper().isEmpty()) {
      throw InputProblem.of("a degree-day model with cutoff " + cutoff + " and no upper threshold")
          .expected("an upper threshold, or the cutoff NONE")
          .because("the rule says what happens above a temperature that is not given")
          .mend("give both thresholds with Thresholds.between, or take UpperCutoff.NONE");
    }
    if (method.needsDayLength() && dayLength.isEmpty()) {
      throw InputProblem.of("the method \"" + method.words() + "\" without a latitude")
          .expected("a rule for the day length, for example DayLength.at(Latitude.north(46))")
          .because("the curve runs from sunrise to sunset, which hang on latitude and date")
          .mend("make the model with DegreeDayModel.sineAndDecay");
    }
  }

  /**
   * A model of a method that needs no day length.
   *
   * @param method how degree-days are found
   * @param thresholds lower and, where the cutoff needs it, upper threshold
   * @param cutoff rule above the upper threshold
   * @throws InputProblem as for all models
   */
  public DegreeDayModel(DegreeDayMethod method, Thresholds thresholds, UpperCutoff cutoff) {
    this(method, thresholds, cutoff, Optional.empty());
  }

  /**
   * A model of a method that needs no day length.
   *
   * @param method how degree-days are found
   * @param thresholds lower and, where the cutoff needs it, upper threshold
   * @param cutoff rule above the upper threshold
   * @return the model
   * @throws InputProblem when the parts do not fit each other
   */
  public static DegreeDayModel of(
      DegreeDayMethod method, Thresholds thresholds, UpperCutoff cutoff) {
    return new DegreeDayModel(method, thresholds, cutoff);
  }

  /**
   * The single sine with a cutoff.
   *
   * @param thresholds lower and, where the cutoff needs it, upper threshold
   * @param cutoff rule above the upper threshold
   * @return the model
   * @throws InputProblem when a cutoff is asked for without an upper threshold
   */
  public static DegreeDayModel singleSine(Thresholds thresholds, UpperCutoff cutoff) {
    return new DegreeDayModel(DegreeDayMethod.SINGLE_SINE, thresholds, cutoff);
  }

  /**
   * The sine by day with decay by night.
   *
   * @param thresholds lower and, where the cutoff needs it, upper threshold
   * @param cutoff rule above the upper threshold
   * @param dayLength day length at the place
   * @return the model
   * @throws InputProblem when a cutoff is asked for without an upper threshold
   */
  public static DegreeDayModel sineAndDecay(
      Thresholds thresholds, UpperCutoff cutoff, DayLength dayLength) {
    return new DegreeDayModel(
        DegreeDayMethod.SINE_AND_DECAY, thresholds, cutoff, Optional.of(dayLength));
  }

  /**
   * This model by another method.
   *
   * @param other how degree-days are found
   * @return a new model
   * @throws InputProblem when the parts do not fit each other
   */
  public DegreeDayModel with(DegreeDayMethod other) {
    return new DegreeDayModel(other, thresholds, cutoff, dayLength);
  }

  /**
   * This model between other thresholds.
   *
   * @param other lower and, where the cutoff needs it, upper threshold
   * @return a new model
   * @throws InputProblem when a cutoff is asked for without an upper threshold
   */
  public DegreeDayModel with(Thresholds other) {
    return new DegreeDayModel(method, other, cutoff, dayLength);
  }

  /**
   * This model with another rule above the upper threshold.
   *
   * @param other the rule
   * @return a new model
   * @throws InputProblem when the parts do not fit each other
   */
  public DegreeDayModel with(UpperCutoff other) {
    return new DegreeDayModel(method, thresholds, other, dayLength);
  }

  /**
   * Degree-days of one day by a method that looks neither at tomorrow nor at the sun.
   *
   * @param minCelsius lowest temperature of the day in °C
   * @param maxCelsius highest temperature of the day in °C, not below the lowest
   * @return °C·d, never negative; NaN when one of the temperatures is NaN
   * @throws InputProblem when the minimum is above the maximum, or the method needs more
   */
  public double degreeDaysC(double minCelsius, double maxCelsius) {
    if (method.needsNextMinimum()) {
      throw InputProblem.of("one day's minimum and maximum for the " + method.words())
          .expected("tomorrow's minimum too")
          .because("the curve ends there, and taking it for today's would be another method")
          .mend(
              "give it as the third argument; for a last day without one take the method "
                  + method.withoutTomorrow()
                  + ", or DailyDegreeDays, which does so and says so");
    }
    return degreeDaysC(CurveDay.of(minCelsius, maxCelsius));
  }

  /**
   * Degree-days of one day whose tomorrow is known. Methods that do not look at tomorrow ignore its
   * minimum.
   *
   * @param minCelsius lowest temperature of the day in °C
   * @param maxCelsius highest temperature of the day in °C, not below the lowest
   * @param nextMinCelsius lowest temperature of the day after it in °C
   * @return °C·d, never negative; NaN when a temperature that is needed is NaN
   * @throws InputProblem when the minimum is above the maximum, or the method needs a day length
   */
  public double degreeDaysC(double minCelsius, double maxCelsius, double nextMinCelsius) {
    if (method.needsDayLength()) {
      throw InputProblem.of("a day without its date for the " + method.words())
          .expected("the day of the year")
          .because("day length hangs on it")
          .mend("give it as the fourth argument, 1 for 1 January");
    }
    return degreeDaysC(CurveDay.of(minCelsius, maxCelsius).withNextMinimum(nextMinCelsius));
  }

  /**
   * Degree-days of one day whose tomorrow and date are known, by any method for extremes.
   *
   * @param minCelsius lowest temperature of the day in °C
   * @param maxCelsius highest temperature of the day in °C, not below the lowest
   * @param nextMinCelsius lowest temperature of the day after it in °C
   * @param dayOfYear 1 for 1 January to 366; read only by a method that needs day lengths
   * @return °C·d, never negative; NaN when a temperature that is needed is NaN
   * @throws InputProblem when the minimum is above the maximum
   */
  public double degreeDaysC(
      double minCelsius, double maxCelsius, double nextMinCelsius, int dayOfYear) {
    var day = CurveDay.of(minCelsius, maxCelsius).withNextMinimum(nextMinCelsius);
    return degreeDaysC(
        method.needsDayLength() ? day.withDayLength(dayLength.get().hours(dayOfYear)) : day);
  }

  /**
   * Degree-days of one day from everything that its curve needs.
   *
   * @param day extremes, and next minimum and day length where the method needs them; the day
   *     length is taken from here and not from {@link #dayLength()}
   * @return °C·d, never negative; NaN when something needed is not known
   */
  public double degreeDaysC(CurveDay day) {
    double lower = thresholds.lower().celsius();
    double aboveLower = method.areaAbove(day, lower);
    if (cutoff == UpperCutoff.NONE || Double.isNaN(aboveLower)) {
      return aboveLower;
    }
    double upper = thresholds.upper().get().celsius();
    if (day.maxCelsius() <= upper) {
      return aboveLower;
    }
    double aboveUpper = method.areaAbove(day, upper);
    double net =
        switch (cutoff) {
          case NONE -> aboveLower;
          case HORIZONTAL -> aboveLower - aboveUpper;
          case INTERMEDIATE -> aboveLower - 2 * aboveUpper;
          case VERTICAL ->
              aboveLower - aboveUpper - (upper - lower) * method.shareAbove(day, upper);
        };
    // Only the intermediate rule can be negative by more than rounding; see UpperCutoff.
    return Math.max(0, net);
  }

  /**
   * Degree-days of one day by a method that looks neither at tomorrow nor at the sun.
   *
   * @param day the day's extremes
   * @return the thermal time of that day
   * @throws InputProblem when the method needs more
   */
  public ThermalTime degreeDays(DailyExtremes day) {
    return new ThermalTime(degreeDaysC(day.minCelsius(), day.maxCelsius()));
  }

  /**
   * Degree-days of one day whose tomorrow is known, by any method for extremes.
   *
   * @param day the day's extremes
   * @param tomorrow those of the day after it
   * @return the thermal time of the first day
   * @throws InputProblem when the second day does not follow the first
   */
  public ThermalTime degreeDays(DailyExtremes day, DailyExtremes tomorrow) {
    return new ThermalTime(degreeDaysC(curveDay(day, tomorrow)));
  }

  /**
   * What the curve needs to know of a day.
   *
   * @param day the day's extremes
   * @param tomorrow those of the day after it
   * @return the day with next minimum and, where this model has a rule for it, day length
   * @throws InputProblem when the second day does not follow the first
   */
  public CurveDay curveDay(DailyExtremes day, DailyExtremes tomorrow) {
    if (!tomorrow.date().equals(day.date().plusDays(1))) {
      throw InputProblem.of("the days " + day.date() + " and " + tomorrow.date())
          .expected("a day and the day after it")
          .because("the curve of a day ends at the minimum of the next morning")
          .mend("give the extremes of " + day.date().plusDays(1));
    }
    var known = CurveDay.of(day).withNextMinimum(tomorrow.minCelsius());
    return dayLength.map(rule -> known.withDayLength(rule.hours(day.date()))).orElse(known);
  }

  /**
   * The steps to the degree-days of one day, rounded for print, by a method that looks neither at
   * tomorrow nor at the sun.
   *
   * @param day the day's extremes
   * @return mean, amplitude, case, areas above the thresholds, and the total with its sources
   * @throws InputProblem when the method needs more
   */
  public Working working(DailyExtremes day) {
    degreeDays(day);
    return DegreeDayWorking.of(this, day.date(), CurveDay.of(day));
  }

  /**
   * The steps to the degree-days of one day, rounded for print, by any method for extremes.
   *
   * @param day the day's extremes
   * @param tomorrow those of the day after it
   * @return the steps with their sources
   * @throws InputProblem when the second day does not follow the first
   */
  public Working working(DailyExtremes day, DailyExtremes tomorrow) {
    return DegreeDayWorking.of(this, day.date(), curveDay(day, tomorrow));
  }

  /**
   * Degree-days of consecutive days. A method that looks at tomorrow takes the next element; where
   * that is not known, and on the last day, {@link DegreeDayMethod#withoutTomorrow()} stands in.
   * {@link #daily} does the same and tells on which days.
   *
   * @param minCelsius lowest temperatures in °C
   * @param maxCelsius highest temperatures in °C, as many as there are lowest ones
   * @return a new array of as many values in °C·d, NaN where a temperature is NaN
   * @throws InputProblem when the arrays differ in length, a minimum is above its maximum, or the
   *     method needs dates
   */
  public double[] degreeDaysC(double[] minCelsius, double[] maxCelsius) {
    if (minCelsius.length != maxCelsius.length) {
      throw InputProblem.of(
              minCelsius.length + " daily minima and " + maxCelsius.length + " daily maxima")
          .expected("as many minima as maxima")
          .because("each day needs both")
          .mend("give both arrays for the same days");
    }
    if (method.needsDayLength()) {
      throw InputProblem.of("days without dates for the " + method.words())
          .expected("DailyTemperatures, whose days have dates")
          .because("day length hangs on the date")
          .mend("call daily(temperatures)");
    }
    return method.needsNextMinimum()
        ? DayByDay.of(this, minCelsius, maxCelsius).valuesC()
        : ofSingleDays(minCelsius, maxCelsius);
  }

  private double[] ofSingleDays(double[] minCelsius, double[] maxCelsius) {
    var degreeDaysC = new double[minCelsius.length];
    for (int i = 0; i < degreeDaysC.length; i++) {
      degreeDaysC[i] =
          Double.isNaN(minCelsius[i]) || Double.isNaN(maxCelsius[i])
              ? Double.NaN
              : degreeDaysC(CurveDay.of(minCelsius[i], maxCelsius[i]));
    }
    return degreeDaysC;
  }

  /**
   * Degree-days of all days of a series.
   *
   * @param temperatures daily extremes
   * @return one value for each day, and which of them rest on less than the method asks for
   * @throws InputProblem when the method works on readings
   */
  public DailyDegreeDays daily(DailyTemperatures temperatures) {
    return DailyDegreeDays.of(this, temperatures);
  }

  @Override
  public String toString() {
    return method.words()
        + ", "
        + thresholds
        + (cutoff == UpperCutoff.NONE ? "" : ", " + cutoff.meaning());
  }
}
