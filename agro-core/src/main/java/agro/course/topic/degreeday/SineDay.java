package agro.course.topic.degreeday;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.ExamAid;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.development.DegreeDayMethod;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Degree-days of a day that crosses the threshold, by the single sine. */
final class SineDay implements ExerciseType {

  @Override
  public String code() {
    return "degree-days-sine";
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
        DegreeDayMistake.SIGN_TURNED,
        DegreeDayMistake.RANGE_FOR_HALF_RANGE,
        DegreeDayMistake.MEAN_FOR_SINE,
        DegreeDayMistake.HALF_RANGE_FORGOTTEN,
        DegreeDayMistake.ARCSINE_IN_DEGREES);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DegreeScale.of(context);
    double lower = scale.fahrenheit() ? draw.step(45, 54, 1) : draw.step(7, 12, 0.5);
    var range = SineDraw.of(draw, scale);
    double mean = lower - range.argument(draw, -0.9, 0.7) * range.half();
    double min = DegreeScale.tenth(mean - range.half());
    double max = DegreeScale.tenth(mean + range.half());
    var pest = draw.oneOf(context.setting().pests());
    var words = scale.words();
    var steps = new SineSteps(scale, min, max, context.exam());
    var body =
        ExerciseBody.titled(words.say("sine.title"))
            .story(
                words.say(
                    "sine.story",
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
                Givens.none()
                    .withNumber("lower", lower)
                    .withNumber("min", min)
                    .withNumber("max", max))
            .part(words.say("sine.question.argument"), earlier -> argument(steps, lower))
            .part(
                words.say(
                    context.exam() ? "sine.question.table" : "sine.question.formula",
                    "unit",
                    context.units().thermalTime().symbol()),
                earlier -> sine(steps, lower, earlier.number(0)))
            .source(DegreeDayMethod.SINGLE_SINE.source());
    return (context.exam() ? body.aid(ExamAid.DEGREE_DAY_TABLE) : body).build();
  }

  private static SolvedPart argument(SineSteps steps, double lower) {
    var scale = steps.scale();
    double right = steps.argument(lower);
    var words = scale.words();
    var working = scale.meanStep(Working.of(words.say("sine.title")), steps.min(), steps.max());
    var withHalf =
        scale.step(
            working,
            "sine.half",
            "(" + scale.term(steps.max()) + " − " + scale.term(steps.min()) + ") / 2",
            scale.degrees(steps.half()));
    return new SolvedPart(
        NumberAnswer.rounded(right, 2),
        scale.step(
            withHalf,
            "sine.argument",
            "("
                + scale.term(lower)
                + " − "
                + scale.term(steps.mean())
                + ") / "
                + scale.term(steps.half()),
            words.number(right, 2)),
        List.of(
            new TypicalSlip(DegreeDayMistake.SIGN_TURNED, NumberAnswer.rounded(-right, 2)),
            new TypicalSlip(
                DegreeDayMistake.RANGE_FOR_HALF_RANGE, NumberAnswer.rounded(right / 2, 2))));
  }

  private static SolvedPart sine(SineSteps steps, double lower, double argument) {
    var scale = steps.scale();
    return steps.solve(
        scale.words().say("sine.title"),
        argument,
        scale.slip(DegreeDayMistake.MEAN_FOR_SINE, scale.average(steps.min(), steps.max(), lower)));
  }
}
