package agro.course.topic.development;

import agro.course.AnswerTolerance;
import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.ThermalTimeAnswer;
import agro.course.TypicalSlip;
import agro.development.rate.DerivedPoint;
import agro.development.rate.LineMethod;
import agro.development.rate.RateCurve;
import agro.development.rate.RateModel;
import agro.units.Temperature;
import agro.units.ThermalTime;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Threshold, requirement and days from a straight line of rates whose a and b are given. */
final class RateLine implements ExerciseType {

  private static final MathContext FOUR_DIGITS = new MathContext(4);

  private static final int RATE_DECIMALS = 4;

  private record Line(double a, double b, double at) {}

  @Override
  public String code() {
    return "development-line";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEVELOPMENT;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DevelopmentMistake.SIGN_FORGOTTEN,
        DevelopmentMistake.LINE_TURNED,
        DevelopmentMistake.SLOPE_FOR_REQUIREMENT,
        DevelopmentMistake.INTERCEPT_FOR_SLOPE,
        DevelopmentMistake.THRESHOLD_FORGOTTEN,
        DevelopmentMistake.RATE_FOR_DAYS);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DevelopmentScale.of(context, "line.title");
    double lower = scale.fahrenheit() ? draw.step(43, 54, 0.1) : draw.step(6, 12, 0.1);
    double requirement = draw.step(120, 480, 1) * (scale.fahrenheit() ? 2 : 1);
    double at = scale.fahrenheit() ? draw.step(62, 82, 1) : draw.step(16, 28, 1);
    double b = new BigDecimal(1 / requirement).round(FOUR_DIGITS).doubleValue();
    double a = new BigDecimal(-lower * b).round(FOUR_DIGITS).doubleValue();
    var line = new Line(a, b, at);
    var words = scale.words();
    return ExerciseBody.titled(scale.title())
        .story(
            words.say(
                "line.story",
                "pest",
                draw.oneOf(context.setting().pests()),
                "unit",
                scale.degree(),
                "a",
                words.exact(a),
                "b",
                words.exact(b)))
        .givens(Givens.none().withNumber("a", a).withNumber("b", b).withNumber("at", at))
        .part(words.say("question.lower", "unit", scale.degree()), earlier -> lower(scale, line))
        .part(
            words.say("question.requirement", "unit", context.units().thermalTime().symbol()),
            earlier -> requirement(scale, line))
        .part(
            words.say("constant.question", "at", scale.degrees(at)),
            earlier -> days(scale, line, earlier))
        .source(LineMethod.LEAST_SQUARES.source())
        .build();
  }

  /** The library's line in °C: a degree of the class may be smaller, and its zero elsewhere. */
  private static RateCurve curve(DevelopmentScale scale, Line line) {
    double first = line.a + line.b * scale.number(Temperature.ofCelsius(0));
    double second = line.a + line.b * scale.number(Temperature.ofCelsius(1));
    return RateModel.LINEAR.curve(first, second - first);
  }

  private static SolvedPart lower(DevelopmentScale scale, Line line) {
    double celsius = curve(scale, line).derived(DerivedPoint.LOWER_THRESHOLD).orElseThrow();
    double right = scale.number(Temperature.ofCelsius(celsius));
    return new SolvedPart(
        scale.temperatureAnswer(right),
        scale.step(
            "lower.line",
            "−(" + scale.words().number(line.a) + ") / " + scale.words().exact(line.b),
            scale.degreesText(right)),
        List.of(
            scale.temperatureSlip(DevelopmentMistake.SIGN_FORGOTTEN, line.a / line.b),
            scale.temperatureSlip(DevelopmentMistake.LINE_TURNED, -line.b / line.a)));
  }

  private static SolvedPart requirement(DevelopmentScale scale, Line line) {
    double right =
        scale.number(
            ThermalTime.ofDegreeDaysC(
                curve(scale, line).derived(DerivedPoint.THERMAL_CONSTANT).orElseThrow()));
    return new SolvedPart(
        scale.sumAnswer(right),
        scale.step("requirement.line", "1 / " + scale.words().exact(line.b), scale.sumText(right)),
        List.of(
            scale.sumSlip(DevelopmentMistake.INTERCEPT_FOR_SLOPE, -1 / line.a),
            // Told apart from nothing by a tolerance of its own.
            new TypicalSlip(
                DevelopmentMistake.SLOPE_FOR_REQUIREMENT,
                new ThermalTimeAnswer(
                    scale.sum(line.b),
                    scale.units().thermalTime(),
                    AnswerTolerance.usual(line.b)))));
  }

  private static SolvedPart days(DevelopmentScale scale, Line line, EarlierAnswers earlier) {
    double lower = scale.number(earlier.temperature(0));
    double requirement = scale.number(earlier.thermalTime(1));
    double above = scale.above(line.at, lower);
    double right =
        RateCurve.linear(earlier.temperature(0).celsius(), earlier.thermalTime(1).degreeDaysC())
            .days(scale.celsius(line.at));
    return new SolvedPart(
        scale.daysAnswer(right),
        scale.step(
            "constant",
            scale.term(requirement)
                + " / ("
                + scale.term(line.at)
                + " − "
                + scale.term(lower)
                + ")",
            scale.daysText(right)),
        List.of(
            scale.daysSlip(DevelopmentMistake.THRESHOLD_FORGOTTEN, requirement / line.at),
            new TypicalSlip(
                DevelopmentMistake.RATE_FOR_DAYS,
                new NumberAnswer(
                    above / requirement,
                    RATE_DECIMALS,
                    AnswerTolerance.usual(above / requirement),
                    scale.daysAnswer(right).of()))));
  }
}
