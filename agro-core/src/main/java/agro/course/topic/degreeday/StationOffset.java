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
import agro.course.SolvedPart;
import agro.course.TemperatureAnswer;
import agro.course.TypicalSlip;
import agro.development.DegreeDayMethod;
import agro.source.Reference;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A field that is warmer or cooler than the station whose temperatures are added up. */
final class StationOffset implements ExerciseType {

  /** The field differs from the station by {@code offset}, negative where it is cooler. */
  private record Plan(double min, double max, double lower, double offset, int days) {
    double mean() {
      return DegreeScale.mean(min, max);
    }
  }

  @Override
  public String code() {
    return "degree-days-offset";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEGREE_DAYS;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DegreeDayMistake.STATION_OFFSET_TURNED,
        DegreeDayMistake.STATION_OFFSET_FORGOTTEN,
        DegreeDayMistake.STATION_OFFSET_TWICE,
        DegreeDayMistake.THRESHOLD_FORGOTTEN,
        DegreeDayMistake.DIFFERENCE_TURNED,
        DegreeDayMistake.ONE_DAY_ONLY);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DegreeScale.of(context);
    boolean fahrenheit = scale.fahrenheit();
    double lower = fahrenheit ? draw.step(43, 50, 1) : draw.step(6, 10, 0.5);
    double size = fahrenheit ? draw.step(1.5, 5, 0.5) : draw.step(0.8, 2.5, 0.1);
    double offset = draw.whole(0, 1) == 0 ? size : -size;
    double min = lower + (fahrenheit ? draw.step(6, 12, 1) : draw.step(3.5, 7, 0.5));
    double max = min + (fahrenheit ? draw.step(14, 27, 1) : draw.step(8, 15, 0.5));
    var plan = new Plan(min, max, lower, offset, draw.whole(20, 60));
    var field = draw.oneOf(context.setting().fields());
    var words = scale.words();
    var unit = context.units();
    return ExerciseBody.titled(words.say("offset.title"))
        .story(
            words.say(
                offset < 0 ? "offset.story.cooler" : "offset.story.warmer",
                "field",
                field,
                "offset",
                scale.degrees(size),
                "max",
                scale.degrees(max),
                "min",
                scale.degrees(min),
                "lower",
                scale.degrees(lower)))
        .givens(
            Givens.none()
                .withNumber("lower", lower)
                .withNumber("min", min)
                .withNumber("max", max)
                .withNumber("offset", offset)
                .withNumber("days", plan.days))
        .part(
            words.say("offset.question.mean", "unit", unit.temperature().symbol()),
            earlier -> mean(scale, plan))
        .part(
            words.say("offset.question.day", "unit", unit.thermalTime().symbol()),
            earlier -> day(scale, plan, earlier))
        .part(
            words.say(
                "offset.question.season", "days", plan.days, "unit", unit.thermalTime().symbol()),
            earlier -> season(scale, plan, earlier))
        .source(DegreeDayMethod.AVERAGE_MEAN_LIMITED.source())
        .source(Reference.commonPractice("A constant difference between station and field"))
        .build();
  }

  private static SolvedPart mean(DegreeScale scale, Plan plan) {
    double right = plan.mean() + plan.offset;
    var slips = new ArrayList<TypicalSlip>();
    slips.add(
        new TypicalSlip(
            DegreeDayMistake.STATION_OFFSET_TURNED, temperature(scale, plan.mean() - plan.offset)));
    slips.add(
        new TypicalSlip(
            DegreeDayMistake.STATION_OFFSET_FORGOTTEN, temperature(scale, plan.mean())));
    slips.add(
        new TypicalSlip(
            DegreeDayMistake.STATION_OFFSET_TWICE, temperature(scale, right + plan.offset)));
    var working = scale.meanStep(Working.of(scale.words().say("offset.title")), plan.min, plan.max);
    return new SolvedPart(
        temperature(scale, right),
        scale.step(
            working,
            "offset.mean",
            scale.term(plan.mean()) + " + " + scale.term(plan.offset),
            scale.words().number(right) + " " + scale.units().temperature().symbol()),
        slips);
  }

  private static SolvedPart day(DegreeScale scale, Plan plan, EarlierAnswers earlier) {
    double mean = earlier.temperature(0).in(scale.units().temperature());
    double right = scale.average(mean, mean, plan.lower);
    return new SolvedPart(
        scale.answer(right),
        scale.step(
            Working.of(scale.words().say("offset.title")),
            "limited",
            "max(0; " + scale.term(mean) + " − " + scale.term(plan.lower) + ")",
            scale.sumText(right)),
        List.of(
            scale.slip(DegreeDayMistake.THRESHOLD_FORGOTTEN, mean),
            scale.slip(
                DegreeDayMistake.STATION_OFFSET_TWICE,
                Math.max(0, mean + plan.offset - plan.lower))));
  }

  private static SolvedPart season(DegreeScale scale, Plan plan, EarlierAnswers earlier) {
    double field = scale.number(earlier.thermalTime(1));
    double station = scale.average(plan.min, plan.max, plan.lower);
    double right = plan.days * (field - station);
    return new SolvedPart(
        scale.answer(right),
        scale.step(
            Working.of(scale.words().say("offset.title")),
            "offset.season",
            plan.days + " × (" + scale.term(field) + " − " + scale.term(station) + ")",
            scale.sumText(right)),
        List.of(
            scale.slip(DegreeDayMistake.ONE_DAY_ONLY, field - station),
            scale.slip(DegreeDayMistake.DIFFERENCE_TURNED, -right)));
  }

  /** A temperature that is asked for with two decimals. */
  private static TemperatureAnswer temperature(DegreeScale scale, double number) {
    double oneUnit = 2 * AnswerTolerance.decimals(2).amount();
    return new TemperatureAnswer(
        scale.temperature(number),
        scale.units().temperature(),
        new AnswerTolerance(oneUnit, AnswerTolerance.Reason.DECIMALS));
  }
}
