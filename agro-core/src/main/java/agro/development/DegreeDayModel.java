package agro.development;

import agro.report.InputProblem;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.working.Working;
import java.util.Objects;

/**
 * A rule that turns the extremes of a day into degree-days: a temperature curve, thresholds, and
 * what happens above the upper one. Six cases follow from where the thresholds lie: the day wholly
 * below the lower threshold, wholly above the upper one, wholly between them, crossing the lower
 * one, crossing the upper one, or crossing both; the closed forms of {@link DegreeDayMethod} and
 * the rules of {@link UpperCutoff} give one formula for all of them.
 *
 * @param method curve of the temperature through the day
 * @param thresholds lower and, where the cutoff needs it, upper threshold; an upper threshold is
 *     not used by {@link UpperCutoff#NONE}
 * @param cutoff rule above the upper threshold
 */
public record DegreeDayModel(DegreeDayMethod method, Thresholds thresholds, UpperCutoff cutoff) {

  /**
   * Checks that the cutoff has the threshold that it needs.
   *
   * @throws InputProblem when a cutoff is asked for without an upper threshold
   */
  public DegreeDayModel {
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(thresholds, "thresholds");
    Objects.requireNonNull(cutoff, "cutoff");
    if (cutoff.needsUpperThreshold() && thresholds.upper().isEmpty()) {
      throw InputProblem.of("a degree-day model with cutoff " + cutoff + " and no upper threshold")
          .expected("an upper threshold, or the cutoff NONE")
          .because("the rule says what happens above a temperature that is not given")
          .mend("give both thresholds with Thresholds.between, or take UpperCutoff.NONE");
    }
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
   * Degree-days of one day.
   *
   * @param minCelsius lowest temperature of the day in °C
   * @param maxCelsius highest temperature of the day in °C, not below the lowest
   * @return °C·d, never negative; NaN when one of the temperatures is NaN
   * @throws InputProblem when the minimum is above the maximum
   */
  public double degreeDaysC(double minCelsius, double maxCelsius) {
    if (!(minCelsius <= maxCelsius)) {
      return unordered(minCelsius, maxCelsius);
    }
    double lower = thresholds.lower().celsius();
    double aboveLower = method.areaAbove(minCelsius, maxCelsius, lower);
    if (cutoff == UpperCutoff.NONE) {
      return aboveLower;
    }
    double upper = thresholds.upper().get().celsius();
    if (maxCelsius <= upper) {
      return aboveLower;
    }
    double aboveUpper = method.areaAbove(minCelsius, maxCelsius, upper);
    double net =
        switch (cutoff) {
          case NONE -> aboveLower;
          case HORIZONTAL -> aboveLower - aboveUpper;
          case INTERMEDIATE -> aboveLower - 2 * aboveUpper;
          case VERTICAL ->
              aboveLower
                  - aboveUpper
                  - (upper - lower) * method.shareAbove(minCelsius, maxCelsius, upper);
        };
    // Only the intermediate rule can be negative by more than rounding; see UpperCutoff.
    return Math.max(0, net);
  }

  private static double unordered(double minCelsius, double maxCelsius) {
    if (Double.isNaN(minCelsius) || Double.isNaN(maxCelsius)) {
      return Double.NaN;
    }
    throw InputProblem.of(
            "a day with minimum " + minCelsius + " °C and maximum " + maxCelsius + " °C")
        .expected("a minimum that is not above the maximum")
        .because("a day cannot be colder at its warmest than at its coldest")
        .mend("look whether the two values are swapped or one is mistyped");
  }

  /**
   * Degree-days of one day.
   *
   * @param day the day's extremes
   * @return the thermal time of that day
   */
  public ThermalTime degreeDays(DailyExtremes day) {
    return new ThermalTime(degreeDaysC(day.minCelsius(), day.maxCelsius()));
  }

  /**
   * The steps to the degree-days of one day, rounded for print.
   *
   * @param day the day's extremes
   * @return mean, amplitude, case, areas above the thresholds, and the total with its sources
   */
  public Working working(DailyExtremes day) {
    return DegreeDayWorking.of(this, day);
  }

  /**
   * Degree-days of many days.
   *
   * @param minCelsius lowest temperatures in °C
   * @param maxCelsius highest temperatures in °C, as many as there are lowest ones
   * @return a new array of as many values in °C·d, NaN where a temperature is NaN
   * @throws InputProblem when the arrays differ in length or a minimum is above its maximum
   */
  public double[] degreeDaysC(double[] minCelsius, double[] maxCelsius) {
    if (minCelsius.length != maxCelsius.length) {
      throw InputProblem.of(
              minCelsius.length + " daily minima and " + maxCelsius.length + " daily maxima")
          .expected("as many minima as maxima")
          .because("each day needs both")
          .mend("give both arrays for the same days");
    }
    var degreeDaysC = new double[minCelsius.length];
    for (int i = 0; i < degreeDaysC.length; i++) {
      degreeDaysC[i] = degreeDaysC(minCelsius[i], maxCelsius[i]);
    }
    return degreeDaysC;
  }

  @Override
  public String toString() {
    return method.words()
        + ", "
        + thresholds
        + (cutoff == UpperCutoff.NONE ? "" : ", " + cutoff.meaning());
  }
}
