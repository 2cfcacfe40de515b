package agro.course.topic.development;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.development.rate.LineMethod;
import agro.development.rate.RateCurve;
import agro.development.rate.RearingData;
import agro.development.rate.ThermalLine;
import agro.units.Temperature;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Threshold and requirement from durations at two constant temperatures. */
final class TwoTemperatures implements ExerciseType {

  private record Plan(double cool, double coolDays, double warm, double warmDays, double at) {}

  @Override
  public String code() {
    return "development-two-temperatures";
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
        DevelopmentMistake.DAYS_ON_A_LINE,
        DevelopmentMistake.SUM_FOR_DIFFERENCE,
        DevelopmentMistake.THRESHOLD_FORGOTTEN,
        DevelopmentMistake.PAIR_MIXED);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DevelopmentScale.of(context, "two.title");
    boolean fahrenheit = scale.fahrenheit();
    double lower = fahrenheit ? draw.step(44, 53, 0.1) : draw.step(6.5, 11.5, 0.1);
    double requirement = draw.step(130, 480, 1) * (fahrenheit ? 1.8 : 1);
    double cool = fahrenheit ? draw.step(60, 66, 1) : draw.step(15, 19, 1);
    double warm = fahrenheit ? draw.step(76, 84, 1) : draw.step(24, 29, 1);
    double at = fahrenheit ? draw.step(69, 73, 1) : draw.step(20.5, 23, 0.5);
    var plan =
        new Plan(
            cool,
            DevelopmentScale.tenth(requirement / (cool - lower)),
            warm,
            DevelopmentScale.tenth(requirement / (warm - lower)),
            at);
    var words = scale.words();
    return ExerciseBody.titled(scale.title())
        .story(
            words.say(
                "two.story",
                "pest",
                draw.oneOf(context.setting().pests()),
                "cool",
                scale.degrees(cool),
                "coolDays",
                words.exact(plan.coolDays),
                "warm",
                scale.degrees(warm),
                "warmDays",
                words.exact(plan.warmDays)))
        .givens(
            Givens.none()
                .withNumber("cool", cool)
                .withNumber("cool days", plan.coolDays)
                .withNumber("warm", warm)
                .withNumber("warm days", plan.warmDays)
                .withNumber("at", at))
        .part(words.say("question.lower", "unit", scale.degree()), earlier -> lower(scale, plan))
        .part(
            words.say("question.requirement", "unit", context.units().thermalTime().symbol()),
            earlier -> requirement(scale, plan, earlier))
        .part(
            words.say("constant.question", "at", scale.degrees(at)),
            earlier -> days(scale, plan, earlier))
        .source(LineMethod.LEAST_SQUARES.source())
        .build();
  }

  private static SolvedPart lower(DevelopmentScale scale, Plan plan) {
    var line =
        ThermalLine.of(
            RearingData.ofMeans(
                scale.title(),
                new double[] {scale.celsius(plan.cool), scale.celsius(plan.warm)},
                new double[] {plan.coolDays, plan.warmDays}),
            LineMethod.LEAST_SQUARES);
    double right = scale.number(Temperature.ofCelsius(line.lowerCelsius()));
    double coolSum = plan.coolDays * plan.cool;
    double warmSum = plan.warmDays * plan.warm;
    double fewer = plan.coolDays - plan.warmDays;
    var terms =
        "("
            + scale.term(plan.coolDays)
            + " × "
            + scale.term(plan.cool)
            + " − "
            + scale.term(plan.warmDays)
            + " × "
            + scale.term(plan.warm)
            + ") / ("
            + scale.term(plan.coolDays)
            + " − "
            + scale.term(plan.warmDays)
            + ")";
    return new SolvedPart(
        scale.temperatureAnswer(right),
        scale.step("lower.two", terms, scale.degreesText(right)),
        List.of(
            scale.temperatureSlip(
                DevelopmentMistake.DAYS_ON_A_LINE,
                plan.cool + plan.coolDays * (plan.warm - plan.cool) / fewer),
            scale.temperatureSlip(
                DevelopmentMistake.SUM_FOR_DIFFERENCE,
                (coolSum + warmSum) / (plan.coolDays + plan.warmDays))));
  }

  private static SolvedPart requirement(DevelopmentScale scale, Plan plan, EarlierAnswers earlier) {
    double lower = scale.number(earlier.temperature(0));
    double right = plan.coolDays * scale.above(plan.cool, lower);
    return new SolvedPart(
        scale.sumAnswer(right),
        scale.step(
            "requirement.two",
            scale.term(plan.coolDays)
                + " × ("
                + scale.term(plan.cool)
                + " − "
                + scale.term(lower)
                + ")",
            scale.sumText(right)),
        List.of(
            scale.sumSlip(DevelopmentMistake.THRESHOLD_FORGOTTEN, plan.coolDays * plan.cool),
            scale.sumSlip(DevelopmentMistake.PAIR_MIXED, plan.coolDays * (plan.warm - lower))));
  }

  private static SolvedPart days(DevelopmentScale scale, Plan plan, EarlierAnswers earlier) {
    double lower = scale.number(earlier.temperature(0));
    double requirement = scale.number(earlier.thermalTime(1));
    scale.above(plan.at, lower);
    double right =
        RateCurve.linear(earlier.temperature(0).celsius(), earlier.thermalTime(1).degreeDaysC())
            .days(scale.celsius(plan.at));
    double between =
        plan.coolDays
            - (plan.coolDays - plan.warmDays) * (plan.at - plan.cool) / (plan.warm - plan.cool);
    return new SolvedPart(
        scale.daysAnswer(right),
        scale.step(
            "constant",
            scale.term(requirement)
                + " / ("
                + scale.term(plan.at)
                + " − "
                + scale.term(lower)
                + ")",
            scale.daysText(right)),
        List.of(
            scale.daysSlip(DevelopmentMistake.THRESHOLD_FORGOTTEN, requirement / plan.at),
            scale.daysSlip(DevelopmentMistake.DAYS_ON_A_LINE, between)));
  }
}
