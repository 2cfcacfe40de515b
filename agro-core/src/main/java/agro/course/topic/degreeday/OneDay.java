package agro.course.topic.degreeday;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.development.DegreeDayMethod;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Degree-days of a warm day by the mean of its extremes. */
final class OneDay implements ExerciseType {

  @Override
  public String code() {
    return "degree-days-day";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEGREE_DAYS;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DegreeDayMistake.THRESHOLD_FORGOTTEN,
        DegreeDayMistake.MAXIMUM_FOR_MEAN,
        DegreeDayMistake.HALF_RANGE_FOR_MEAN);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DegreeScale.of(context);
    boolean fahrenheit = scale.fahrenheit();
    double lower = fahrenheit ? draw.step(41, 50, 1) : draw.step(5, 10, 0.5);
    double min = lower + (fahrenheit ? draw.step(2, 9, 1) : draw.step(1, 5, 0.5));
    double max = min + (fahrenheit ? draw.step(14, 29, 1) : draw.step(8, 16, 0.5));
    var pest = draw.oneOf(context.setting().pests());
    var words = scale.words();
    return ExerciseBody.titled(words.say("day.title"))
        .story(
            words.say(
                "day.story",
                "place",
                context.setting().place(),
                "max",
                scale.degrees(max),
                "min",
                scale.degrees(min),
                "pest",
                pest,
                "lower",
                scale.degrees(lower)))
        .givens(
            Givens.none().withNumber("lower", lower).withNumber("min", min).withNumber("max", max))
        .part(
            words.say("day.question", "unit", context.units().thermalTime().symbol()),
            earlier -> solve(scale, min, max, lower))
        .source(DegreeDayMethod.AVERAGE_MEAN_LIMITED.source())
        .build();
  }

  private static SolvedPart solve(DegreeScale scale, double min, double max, double lower) {
    double right = scale.average(min, max, lower);
    double mean = DegreeScale.mean(min, max);
    var working = scale.meanStep(Working.of(scale.words().say("day.title")), min, max);
    return new SolvedPart(
        scale.answer(right),
        scale.step(
            working, "above", scale.term(mean) + " − " + scale.term(lower), scale.sumText(right)),
        List.of(
            scale.slip(DegreeDayMistake.THRESHOLD_FORGOTTEN, mean),
            scale.slip(DegreeDayMistake.MAXIMUM_FOR_MEAN, max - lower),
            scale.slip(DegreeDayMistake.HALF_RANGE_FOR_MEAN, (max - min) / 2)));
  }
}
