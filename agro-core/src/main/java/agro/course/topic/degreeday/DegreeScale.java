package agro.course.topic.degreeday;

import agro.course.AnswerTolerance;
import agro.course.CourseContext;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.ThermalTimeAnswer;
import agro.course.TypicalSlip;
import agro.development.DegreeDayMethod;
import agro.development.DegreeDayModel;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.units.Temperature;
import agro.units.TemperatureUnit;
import agro.units.ThermalTime;
import agro.working.Working;

/**
 * Temperatures and sums as plain numbers in the unit of the class, and the way to the classes of
 * the library and back.
 *
 * @param units units of the class
 * @param words words of the topic
 */
record DegreeScale(CourseUnits units, CourseWords words) {

  private static final double LEAST_TOLERANCE = 0.01;

  static DegreeScale of(CourseContext context) {
    return new DegreeScale(context.units(), context.words().in(DegreeScale.class, "degreeday"));
  }

  boolean fahrenheit() {
    return units.temperature() == TemperatureUnit.FAHRENHEIT;
  }

  double either(double celsius, double fahrenheit) {
    return fahrenheit() ? fahrenheit : celsius;
  }

  Temperature temperature(double number) {
    return Temperature.of(number, units.temperature());
  }

  double celsius(double number) {
    return temperature(number).celsius();
  }

  ThermalTime sum(double number) {
    return ThermalTime.of(number, units.thermalTime());
  }

  double number(ThermalTime sum) {
    return sum.in(units.thermalTime());
  }

  DegreeDayModel averages(double lower) {
    return DegreeDayModel.of(
        DegreeDayMethod.AVERAGE_MEAN_LIMITED,
        Thresholds.above(temperature(lower)),
        UpperCutoff.NONE);
  }

  /** Degree-days of a day by the mean of its extremes, never below 0. */
  double average(double min, double max, double lower) {
    return number(
        ThermalTime.ofDegreeDaysC(averages(lower).degreeDaysC(celsius(min), celsius(max))));
  }

  double areaAbove(DegreeDayMethod method, double min, double max, double threshold) {
    return number(
        ThermalTime.ofDegreeDaysC(
            method.areaAbove(celsius(min), celsius(max), celsius(threshold))));
  }

  ThermalTimeAnswer answer(double number) {
    var usual = AnswerTolerance.usual(number);
    return new ThermalTimeAnswer(
        sum(number),
        units.thermalTime(),
        usual.amount() < LEAST_TOLERANCE
            ? new AnswerTolerance(LEAST_TOLERANCE, AnswerTolerance.Reason.DECIMALS)
            : usual);
  }

  TypicalSlip slip(DegreeDayMistake mistake, double number) {
    return new TypicalSlip(mistake, answer(number));
  }

  /** A temperature that was drawn, with its unit. */
  String degrees(double number) {
    return words.exact(number) + " " + units.temperature().symbol();
  }

  /** A sum that was drawn, with its unit. */
  String exactSum(double number) {
    return words.exact(number) + " " + units.thermalTime().symbol();
  }

  /** A computed sum, with its unit. */
  String sumText(double number) {
    return words.number(number) + " " + units.thermalTime().symbol();
  }

  /** A number inside a formula: negative ones in parentheses. */
  String term(double number) {
    return number < 0 ? "(" + words.number(number) + ")" : words.number(number);
  }

  Working step(Working working, String key, String substitution, String result) {
    return working.step(
        words.say(key + ".step"), words.say(key + ".formula"), substitution, result);
  }

  /** The step to the mean of a day. */
  Working meanStep(Working working, double min, double max) {
    return step(
        working,
        "mean",
        "(" + term(max) + " + " + term(min) + ") / 2",
        words.number(mean(min, max)) + " " + units.temperature().symbol());
  }

  static double mean(double min, double max) {
    return (min + max) / 2;
  }

  /** Free of the noise of binary fractions, with one decimal. */
  static double tenth(double number) {
    return Math.round(number * 10) / 10.0;
  }
}
