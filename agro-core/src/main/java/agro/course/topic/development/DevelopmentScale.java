package agro.course.topic.development;

import agro.course.AnswerTolerance;
import agro.course.CourseContext;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.NumberAnswer;
import agro.course.TemperatureAnswer;
import agro.course.ThermalTimeAnswer;
import agro.course.TypicalSlip;
import agro.development.Span;
import agro.development.ThermalRequirement;
import agro.development.Thresholds;
import agro.source.Reference;
import agro.units.Temperature;
import agro.units.TemperatureUnit;
import agro.units.ThermalTime;
import agro.weather.MediumKind;
import agro.working.Working;
import java.util.Optional;

/**
 * Temperatures, sums and durations as plain numbers in the unit of the class, and as answers.
 *
 * @param units units of the class
 * @param words words of the topic
 * @param title title of the exercise
 */
record DevelopmentScale(CourseUnits units, CourseWords words, String title) {

  private static final double LEAST_TOLERANCE = 0.01;

  static DevelopmentScale of(CourseContext context, String titleKey) {
    var words = context.words().in(DevelopmentScale.class, "development");
    return new DevelopmentScale(context.units(), words, words.say(titleKey));
  }

  boolean fahrenheit() {
    return units.temperature() == TemperatureUnit.FAHRENHEIT;
  }

  String degree() {
    return units.temperature().symbol();
  }

  Temperature temperature(double number) {
    return Temperature.of(number, units.temperature());
  }

  double celsius(double number) {
    return temperature(number).celsius();
  }

  double number(Temperature temperature) {
    return temperature.in(units.temperature());
  }

  double number(ThermalTime sum) {
    return sum.in(units.thermalTime());
  }

  ThermalTime sum(double number) {
    return ThermalTime.of(number, units.thermalTime());
  }

  /** A temperature that is asked for with one decimal. */
  TemperatureAnswer temperatureAnswer(double number) {
    return new TemperatureAnswer(
        temperature(number),
        units.temperature(),
        new AnswerTolerance(
            2 * AnswerTolerance.decimals(1).amount(), AnswerTolerance.Reason.DECIMALS));
  }

  ThermalTimeAnswer sumAnswer(double number) {
    var usual = AnswerTolerance.usual(number);
    return new ThermalTimeAnswer(
        sum(number),
        units.thermalTime(),
        usual.amount() < LEAST_TOLERANCE
            ? new AnswerTolerance(LEAST_TOLERANCE, AnswerTolerance.Reason.DECIMALS)
            : usual);
  }

  NumberAnswer daysAnswer(double days) {
    return NumberAnswer.computed(days, 1, words.say("days"), words.say("days.short"));
  }

  TypicalSlip temperatureSlip(DevelopmentMistake mistake, double number) {
    return new TypicalSlip(mistake, temperatureAnswer(number));
  }

  TypicalSlip sumSlip(DevelopmentMistake mistake, double number) {
    return new TypicalSlip(mistake, sumAnswer(number));
  }

  TypicalSlip daysSlip(DevelopmentMistake mistake, double days) {
    return new TypicalSlip(mistake, daysAnswer(days));
  }

  String degrees(double number) {
    return words.exact(number) + " " + degree();
  }

  String degreesText(double number) {
    return words.number(number) + " " + degree();
  }

  String exactSum(double number) {
    return words.exact(number) + " " + units.thermalTime().symbol();
  }

  String sumText(double number) {
    return words.number(number) + " " + units.thermalTime().symbol();
  }

  String daysText(double days) {
    return daysAnswer(days).print(words);
  }

  /** A number inside a formula: negative ones in parentheses. */
  String term(double number) {
    return number < 0 ? "(" + words.number(number) + ")" : words.number(number);
  }

  Working working() {
    return Working.of(title);
  }

  Working step(Working working, String key, String substitution, String result) {
    return working.step(
        words.say(key + ".step"), words.say(key + ".formula"), substitution, result);
  }

  Working step(String key, String substitution, String result) {
    return step(working(), key, substitution, result);
  }

  /** An invented requirement above an own threshold, as the library takes it. */
  ThermalRequirement requirement(String pest, Span span, double lower, ThermalTime sum) {
    return new ThermalRequirement(
        pest,
        "",
        span,
        MediumKind.AIR,
        Thresholds.above(temperature(lower)),
        sum,
        Optional.empty(),
        Reference.invented("A requirement for an exercise"));
  }

  /** How far a constant temperature lies above a threshold; refuses one at which nothing grows. */
  double above(double at, double lower) {
    if (!(at > lower)) {
      throw new IllegalArgumentException("nothing develops at or below the threshold");
    }
    return at - lower;
  }

  /** Free of the noise of binary fractions, with one decimal. */
  static double tenth(double number) {
    return Math.round(number * 10) / 10.0;
  }
}
