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
import agro.course.ThermalTimeAnswer;
import agro.course.TypicalSlip;
import agro.development.DegreeDayMethod;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A day whose minimum lies below the threshold: what the mean misses that the triangle counts. */
final class CoolDay implements ExerciseType {

  private record Day(double min, double max, double lower, int days) {}

  @Override
  public String code() {
    return "degree-days-cool-day";
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
        DegreeDayMistake.THRESHOLD_FORGOTTEN,
        DegreeDayMistake.NEGATIVE_DAY_COUNTED,
        DegreeDayMistake.MINIMUM_RAISED,
        DegreeDayMistake.TRIANGLE_NOT_HALVED,
        DegreeDayMistake.ONE_DAY_ONLY,
        DegreeDayMistake.DIFFERENCE_TURNED);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DegreeScale.of(context);
    boolean fahrenheit = scale.fahrenheit();
    double lower = fahrenheit ? draw.step(45, 54, 1) : draw.step(7, 12, 0.5);
    double below = fahrenheit ? draw.step(4, 11, 1) : draw.step(2, 6, 0.5);
    double above = fahrenheit ? draw.step(5, 21, 1) : draw.step(3, 12, 0.5);
    var day = new Day(lower - below, lower + above, lower, draw.whole(7, 21));
    var pest = draw.oneOf(context.setting().pests());
    var words = scale.words();
    var unit = context.units().thermalTime().symbol();
    return ExerciseBody.titled(words.say("cool.title"))
        .story(
            words.say(
                "cool.story",
                "place",
                context.setting().place(),
                "max",
                scale.degrees(day.max),
                "min",
                scale.degrees(day.min),
                "pest",
                pest,
                "lower",
                scale.degrees(lower)))
        .givens(
            Givens.none()
                .withNumber("lower", lower)
                .withNumber("min", day.min)
                .withNumber("max", day.max)
                .withNumber("days", day.days))
        .part(words.say("cool.question.mean", "unit", unit), earlier -> mean(scale, day))
        .part(words.say("cool.question.triangle", "unit", unit), earlier -> triangle(scale, day))
        .part(
            words.say("cool.question.missed", "days", day.days, "unit", unit),
            earlier -> missed(scale, day, earlier))
        .source(DegreeDayMethod.AVERAGE_MEAN_LIMITED.source())
        .source(DegreeDayMethod.SINGLE_TRIANGLE.source())
        .build();
  }

  private static SolvedPart mean(DegreeScale scale, Day day) {
    double right = scale.average(day.min, day.max, day.lower);
    double mean = DegreeScale.mean(day.min, day.max);
    var slips = new ArrayList<TypicalSlip>();
    slips.add(scale.slip(DegreeDayMistake.THRESHOLD_FORGOTTEN, mean));
    slips.add(scale.slip(DegreeDayMistake.MINIMUM_RAISED, (day.max - day.lower) / 2));
    if (mean < day.lower) {
      slips.add(scale.slip(DegreeDayMistake.NEGATIVE_DAY_COUNTED, mean - day.lower));
    }
    var working = scale.meanStep(Working.of(scale.words().say("cool.title")), day.min, day.max);
    return new SolvedPart(
        scale.answer(right),
        scale.step(
            working,
            "limited",
            "max(0; " + scale.term(mean) + " − " + scale.term(day.lower) + ")",
            scale.sumText(right)),
        slips);
  }

  private static SolvedPart triangle(DegreeScale scale, Day day) {
    double right = scale.areaAbove(DegreeDayMethod.SINGLE_TRIANGLE, day.min, day.max, day.lower);
    double above = day.max - day.lower;
    var working =
        scale.step(
            Working.of(scale.words().say("cool.title")),
            "triangle",
            "("
                + scale.term(day.max)
                + " − "
                + scale.term(day.lower)
                + ")² / [2 × ("
                + scale.term(day.max)
                + " − "
                + scale.term(day.min)
                + ")]",
            scale.sumText(right));
    return new SolvedPart(
        scale.answer(right),
        working,
        List.of(
            scale.slip(DegreeDayMistake.TRIANGLE_NOT_HALVED, 2 * right),
            scale.slip(DegreeDayMistake.MINIMUM_RAISED, above / 2)));
  }

  private static SolvedPart missed(DegreeScale scale, Day day, EarlierAnswers earlier) {
    double mean = scale.number(earlier.thermalTime(0));
    double triangle = scale.number(earlier.thermalTime(1));
    double right = day.days * (triangle - mean);
    var working =
        scale.step(
            Working.of(scale.words().say("cool.title")),
            "missed",
            day.days + " × (" + scale.term(triangle) + " − " + scale.term(mean) + ")",
            scale.sumText(right));
    // Both figures of a day were rounded to two decimals, and are multiplied by the days.
    double rounding = Math.max(AnswerTolerance.usual(right).amount(), 0.006 * day.days);
    return new SolvedPart(
        new ThermalTimeAnswer(
            scale.sum(right),
            scale.units().thermalTime(),
            new AnswerTolerance(rounding, AnswerTolerance.Reason.SHARE)),
        working,
        List.of(
            scale.slip(DegreeDayMistake.ONE_DAY_ONLY, triangle - mean),
            scale.slip(DegreeDayMistake.DIFFERENCE_TURNED, -right)));
  }
}
