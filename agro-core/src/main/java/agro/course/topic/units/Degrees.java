package agro.course.topic.units;

import agro.course.AnswerTolerance;
import agro.course.CourseContext;
import agro.course.CourseWords;
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.course.TemperatureAnswer;
import agro.course.ThermalTimeAnswer;
import agro.units.Temperature;
import agro.units.TemperatureDifference;
import agro.units.TemperatureUnit;
import agro.units.ThermalTime;
import agro.units.ThermalTimeUnit;
import java.util.List;

/**
 * Temperatures, their differences and degree-days of a handbook in the other scale, converted into
 * that of the class.
 *
 * @param context for whom
 */
record Degrees(CourseContext context) {

  private static final double FREEZING = 32;

  /** Half a unit of the first decimal, and as much again for rounded steps. */
  private static final double TENTH = 0.1;

  boolean handbookIsFahrenheit() {
    return ours() != TemperatureUnit.FAHRENHEIT;
  }

  TemperatureUnit ours() {
    return context.units().temperature();
  }

  TemperatureUnit handbook() {
    return handbookIsFahrenheit() ? TemperatureUnit.FAHRENHEIT : TemperatureUnit.CELSIUS;
  }

  ThermalTimeUnit oursTime() {
    return context.units().thermalTime();
  }

  ThermalTimeUnit handbookTime() {
    return handbookIsFahrenheit() ? ThermalTimeUnit.FAHRENHEIT_DAY : ThermalTimeUnit.CELSIUS_DAY;
  }

  /** Degrees of the class in one degree of the handbook. */
  private double factor() {
    return handbookIsFahrenheit() ? 5.0 / 9 : 9.0 / 5;
  }

  private String factorText() {
    return handbookIsFahrenheit() ? " × 5/9" : " × 9/5";
  }

  /** A temperature converted, with its slips. */
  SolvedPart temperature(SolutionDraft part, CourseWords words, Temperature temperature) {
    double value = temperature.in(handbook());
    double inOrder =
        handbookIsFahrenheit() ? value * factor() - FREEZING : (value + FREEZING) * factor();
    double inverted =
        handbookIsFahrenheit() ? (value - FREEZING) / factor() : value / factor() + FREEZING;
    var substitution =
        handbookIsFahrenheit()
            ? "(" + words.exact(value) + " − 32)" + factorText()
            : words.exact(value) + factorText() + " + 32";
    return part.step(
            handbookIsFahrenheit() ? "degrees.to.celsius" : "degrees.to.fahrenheit",
            substitution,
            words.number(temperature.in(ours())) + " " + ours().symbol())
        .slip(UnitMistake.OFFSET_FORGOTTEN, temperature(value * factor()))
        .slip(UnitMistake.OFFSET_OUT_OF_ORDER, temperature(inOrder))
        .slip(UnitMistake.DEGREE_FACTOR_INVERTED, temperature(inverted))
        .answer(temperature(temperature.in(ours())));
  }

  private TemperatureAnswer temperature(double number) {
    return new TemperatureAnswer(
        Temperature.of(number, ours()),
        ours(),
        new AnswerTolerance(TENTH, AnswerTolerance.Reason.DECIMALS));
  }

  /** A difference converted, with its slips. */
  SolvedPart difference(SolutionDraft part, CourseWords words, TemperatureDifference shift) {
    double value = shift.in(handbook());
    double offset =
        handbookIsFahrenheit() ? (value - FREEZING) * factor() : value * factor() + FREEZING;
    return part.step(
            handbookIsFahrenheit() ? "degrees.difference.celsius" : "degrees.difference.fahrenheit",
            words.exact(value) + factorText(),
            words.number(shift.in(ours())) + " " + ours().symbol())
        .slip(UnitMistake.OFFSET_IN_DIFFERENCE, difference(offset))
        .slip(UnitMistake.DEGREE_FACTOR_INVERTED, difference(value / factor()))
        .slip(UnitMistake.DEGREE_FACTOR_FORGOTTEN, difference(value))
        .answer(difference(shift.in(ours())));
  }

  private NumberAnswer difference(double number) {
    return new NumberAnswer(
        number,
        2,
        new AnswerTolerance(TENTH, AnswerTolerance.Reason.DECIMALS),
        List.of(ours().symbol(), "K"));
  }

  /** A sum of degree-days converted, with its slips. */
  SolvedPart sum(SolutionDraft part, CourseWords words, ThermalTime sum) {
    double value = sum.in(handbookTime());
    double offset =
        handbookIsFahrenheit() ? (value - FREEZING) * factor() : value * factor() + FREEZING;
    return part.step(
            handbookIsFahrenheit() ? "degrees.sum.celsius" : "degrees.sum.fahrenheit",
            words.exact(value) + factorText(),
            words.number(sum.in(oursTime())) + " " + oursTime().symbol())
        .slip(UnitMistake.OFFSET_IN_DEGREE_DAYS, sum(offset))
        .slip(UnitMistake.DEGREE_FACTOR_INVERTED, sum(value / factor()))
        .slip(UnitMistake.DEGREE_FACTOR_FORGOTTEN, sum(value))
        .answer(sum(sum.in(oursTime())));
  }

  private ThermalTimeAnswer sum(double number) {
    return new ThermalTimeAnswer(
        ThermalTime.of(number, oursTime()), oursTime(), AnswerTolerance.usual(number));
  }
}
