package agro.course.topic.degreeday;

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
import agro.course.TemperatureAnswer;
import agro.course.TypicalSlip;
import agro.development.Span;
import agro.development.ThermalRequirement;
import agro.development.Thresholds;
import agro.source.Reference;
import agro.units.Temperature;
import agro.units.TemperatureUnit;
import agro.units.ThermalTime;
import agro.units.ThermalTimeUnit;
import agro.weather.MediumKind;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Threshold and requirement from a work in the other unit of temperature. */
final class OtherUnits implements ExerciseType {

  private static final double DEGREES = 1.8;
  private static final double FREEZING = 32;

  private record Plan(double lower, double requirement, double at, String pest) {}

  @Override
  public String code() {
    return "degree-days-units";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEGREE_DAYS;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DegreeDayMistake.OFFSET_IN_DIFFERENCE,
        DegreeDayMistake.FACTOR_TURNED,
        DegreeDayMistake.FACTOR_TWICE,
        DegreeDayMistake.OFFSET_FORGOTTEN,
        DegreeDayMistake.OFFSET_AT_WRONG_STEP,
        DegreeDayMistake.THRESHOLD_FORGOTTEN,
        DegreeDayMistake.MIXED_UNITS);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DegreeScale.of(context);
    boolean toFahrenheit = scale.fahrenheit();
    double lower = toFahrenheit ? draw.step(5, 12, 0.5) : draw.step(41, 54, 1);
    double requirement = toFahrenheit ? draw.step(150, 700, 5) : draw.step(270, 1300, 10);
    double at = toFahrenheit ? draw.step(64, 82, 1) : draw.step(18, 28, 1);
    var plan = new Plan(lower, requirement, at, draw.oneOf(context.setting().pests()));
    var words = scale.words();
    var published = toFahrenheit ? TemperatureUnit.CELSIUS : TemperatureUnit.FAHRENHEIT;
    var sum = toFahrenheit ? ThermalTimeUnit.CELSIUS_DAY : ThermalTimeUnit.FAHRENHEIT_DAY;
    var body =
        ExerciseBody.titled(words.say("units.title"))
            .story(
                words.say(
                    "units.story",
                    "pest",
                    plan.pest,
                    "lower",
                    words.exact(lower) + " " + published.symbol(),
                    "requirement",
                    words.exact(requirement) + " " + sum.symbol()))
            .givens(
                Givens.none()
                    .withNumber("lower", lower)
                    .withNumber("requirement", requirement)
                    .withNumber("at", at))
            .part(
                words.say("units.question.sum", "unit", context.units().thermalTime().symbol()),
                earlier -> sum(scale, plan));
    if (difficulty == Difficulty.ROUTINE) {
      body.part(
              words.say("units.question.lower", "unit", context.units().temperature().symbol()),
              earlier -> lower(scale, plan))
          .part(
              words.say("units.question.days", "at", scale.degrees(at)),
              earlier -> days(scale, plan, earlier));
    }
    return body.build();
  }

  private static SolvedPart sum(DegreeScale scale, Plan plan) {
    boolean up = scale.fahrenheit();
    var from = up ? ThermalTimeUnit.CELSIUS_DAY : ThermalTimeUnit.FAHRENHEIT_DAY;
    double right = scale.number(ThermalTime.of(plan.requirement, from));
    double published = plan.requirement;
    var working =
        scale.step(
            Working.of(scale.words().say("units.title")),
            up ? "units.sum.up" : "units.sum.down",
            scale.term(published) + (up ? " × " : " / ") + scale.term(DEGREES),
            scale.sumText(right));
    return new SolvedPart(
        scale.answer(right),
        working,
        List.of(
            scale.slip(
                DegreeDayMistake.OFFSET_IN_DIFFERENCE,
                up ? published * DEGREES + FREEZING : (published - FREEZING) / DEGREES),
            scale.slip(
                DegreeDayMistake.FACTOR_TURNED, up ? published / DEGREES : published * DEGREES),
            scale.slip(DegreeDayMistake.FACTOR_TWICE, up ? right * DEGREES : right / DEGREES)));
  }

  private static SolvedPart lower(DegreeScale scale, Plan plan) {
    boolean up = scale.fahrenheit();
    double published = plan.lower;
    var unit = scale.units().temperature();
    double right =
        Temperature.of(published, up ? TemperatureUnit.CELSIUS : TemperatureUnit.FAHRENHEIT)
            .in(unit);
    var working =
        scale.step(
            Working.of(scale.words().say("units.title")),
            up ? "units.lower.up" : "units.lower.down",
            up
                ? scale.term(published) + " × " + scale.words().exact(DEGREES) + " + 32"
                : "(" + scale.term(published) + " − 32) / " + scale.words().exact(DEGREES),
            scale.words().number(right) + " " + unit.symbol());
    return new SolvedPart(
        temperature(scale, right),
        working,
        List.of(
            new TypicalSlip(
                DegreeDayMistake.OFFSET_FORGOTTEN,
                temperature(scale, up ? published * DEGREES : published / DEGREES)),
            new TypicalSlip(
                DegreeDayMistake.OFFSET_AT_WRONG_STEP,
                temperature(
                    scale,
                    up ? (published + FREEZING) * DEGREES : published / DEGREES - FREEZING))));
  }

  private static TemperatureAnswer temperature(DegreeScale scale, double number) {
    return new TemperatureAnswer(
        scale.temperature(number), scale.units().temperature(), AnswerTolerance.decimals(1));
  }

  private static SolvedPart days(DegreeScale scale, Plan plan, EarlierAnswers earlier) {
    var sum = earlier.thermalTime(0);
    var lower = earlier.temperature(1);
    double right =
        new ThermalRequirement(
                plan.pest,
                "",
                Span.EGG_TO_ADULT,
                MediumKind.AIR,
                Thresholds.above(lower),
                sum,
                Optional.empty(),
                Reference.invented("A requirement for an exercise"))
            .daysAt(scale.celsius(plan.at));
    if (!Double.isFinite(right)) {
      throw new IllegalArgumentException("nothing develops at or below the threshold");
    }
    double above = lower.in(scale.units().temperature());
    double number = scale.number(sum);
    var slips = new ArrayList<TypicalSlip>();
    slips.add(new TypicalSlip(DegreeDayMistake.THRESHOLD_FORGOTTEN, days(scale, number / plan.at)));
    // The published threshold taken from a temperature in the other unit.
    if (plan.at > plan.lower) {
      slips.add(
          new TypicalSlip(
              DegreeDayMistake.MIXED_UNITS, days(scale, number / (plan.at - plan.lower))));
    } else {
      slips.add(
          new TypicalSlip(
              DegreeDayMistake.MIXED_UNITS, days(scale, plan.requirement / (plan.at - above))));
    }
    var working =
        scale.step(
            Working.of(scale.words().say("units.title")),
            "units.days",
            scale.term(number) + " / (" + scale.term(plan.at) + " − " + scale.term(above) + ")",
            days(scale, right).print(scale.words()));
    return new SolvedPart(days(scale, right), working, slips);
  }

  private static NumberAnswer days(DegreeScale scale, double days) {
    return NumberAnswer.computed(
        days, 1, scale.words().say("days"), scale.words().say("days.short"));
  }
}
