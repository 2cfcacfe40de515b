package agro.course.topic.degreeday;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExamAid;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.development.DegreeDayMethod;
import agro.development.UpperCutoff;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A hot day above an upper threshold, by the sine with one of the rules for the cutoff. */
final class HotDay implements ExerciseType {

  private record Limits(double lower, double upper, UpperCutoff rule) {}

  @Override
  public String code() {
    return "degree-days-cutoff";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEGREE_DAYS;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DegreeDayMistake.THRESHOLD_FORGOTTEN,
        DegreeDayMistake.MAXIMUM_FOR_MEAN,
        DegreeDayMistake.SIGN_TURNED,
        DegreeDayMistake.HALF_RANGE_FORGOTTEN,
        DegreeDayMistake.ARCSINE_IN_DEGREES,
        DegreeDayMistake.PEAK_FOR_AREA,
        DegreeDayMistake.CUTOFF_IGNORED,
        DegreeDayMistake.CUTOFF_ADDED,
        DegreeDayMistake.CUTOFF_RULE_CONFUSED);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DegreeScale.of(context);
    double upper = scale.fahrenheit() ? draw.step(82, 90, 1) : draw.step(28, 32, 0.5);
    double wanted = scale.fahrenheit() ? draw.step(43, 52, 1) : draw.step(6, 11, 0.5);
    var range = SineDraw.ofHotDay(draw, scale);
    double mean = upper - range.argument(draw, 0.3, 0.8) * range.half();
    // The share of the day above a threshold takes an arcsine.
    var rule =
        draw.oneOf(
            context.exam()
                ? List.of(UpperCutoff.HORIZONTAL, UpperCutoff.INTERMEDIATE)
                : List.of(UpperCutoff.HORIZONTAL, UpperCutoff.INTERMEDIATE, UpperCutoff.VERTICAL));
    double min = DegreeScale.tenth(mean - range.half());
    double max = DegreeScale.tenth(mean + range.half());
    var limits = new Limits(Math.min(wanted, Math.floor(min)), upper, rule);
    var pest = draw.oneOf(context.setting().pests());
    var steps = new SineSteps(scale, min, max, context.exam());
    return body(context, steps, limits, pest);
  }

  private static ExerciseBody body(
      CourseContext context, SineSteps steps, Limits limits, String pest) {
    var scale = steps.scale();
    var words = scale.words();
    var unit = context.units().thermalTime().symbol();
    var body =
        ExerciseBody.titled(words.say("hot.title"))
            .story(
                words.say(
                    "hot.story",
                    "place",
                    context.setting().place(),
                    "max",
                    scale.degrees(steps.max()),
                    "min",
                    scale.degrees(steps.min()),
                    "pest",
                    pest,
                    "lower",
                    scale.degrees(limits.lower),
                    "upper",
                    scale.degrees(limits.upper)))
            .givens(
                Givens.none()
                    .withNumber("lower", limits.lower)
                    .withNumber("upper", limits.upper)
                    .withNumber("min", steps.min())
                    .withNumber("max", steps.max())
                    .withText("rule", limits.rule.name()))
            .part(
                words.say("hot.question.without", "unit", unit), earlier -> without(steps, limits))
            .part(
                words.say(
                    context.exam() ? "hot.question.table" : "hot.question.formula", "unit", unit),
                earlier -> above(steps, limits))
            .part(
                words.say("hot.question." + code(limits.rule), "unit", unit),
                earlier -> with(steps, limits, earlier))
            .source(DegreeDayMethod.SINGLE_SINE.source())
            .source(limits.rule.source());
    return (context.exam() ? body.aid(ExamAid.DEGREE_DAY_TABLE) : body).build();
  }

  private static String code(UpperCutoff rule) {
    return rule.name().toLowerCase(Locale.ROOT);
  }

  private static SolvedPart without(SineSteps steps, Limits limits) {
    var scale = steps.scale();
    double right =
        scale.areaAbove(DegreeDayMethod.SINGLE_SINE, steps.min(), steps.max(), limits.lower);
    var working =
        scale.meanStep(Working.of(scale.words().say("hot.title")), steps.min(), steps.max());
    return new SolvedPart(
        scale.answer(right),
        scale.step(
            working,
            "above",
            scale.term(steps.mean()) + " − " + scale.term(limits.lower),
            scale.sumText(right)),
        List.of(
            scale.slip(DegreeDayMistake.THRESHOLD_FORGOTTEN, steps.mean()),
            scale.slip(DegreeDayMistake.MAXIMUM_FOR_MEAN, steps.max() - limits.lower)));
  }

  private static SolvedPart above(SineSteps steps, Limits limits) {
    var scale = steps.scale();
    double argument = steps.argument(limits.upper);
    var part =
        steps.solve(
            scale.words().say("hot.title"),
            argument,
            scale.slip(DegreeDayMistake.PEAK_FOR_AREA, steps.max() - limits.upper));
    var working =
        scale.step(
            Working.of(scale.words().say("hot.title")),
            "hot.argument",
            "("
                + scale.term(limits.upper)
                + " − "
                + scale.term(steps.mean())
                + ") / "
                + scale.term(steps.half()),
            scale.words().number(argument, 2));
    return new SolvedPart(part.answer(), working.followedBy(part.working()), part.slips());
  }

  private static SolvedPart with(SineSteps steps, Limits limits, EarlierAnswers earlier) {
    var scale = steps.scale();
    double all = scale.number(earlier.thermalTime(0));
    double above = scale.number(earlier.thermalTime(1));
    double share =
        DegreeDayMethod.SINGLE_SINE.shareAbove(
            scale.celsius(steps.min()), scale.celsius(steps.max()), scale.celsius(limits.upper));
    double height = limits.upper - limits.lower;
    double horizontal = all - above;
    double intermediate = Math.max(0, all - 2 * above);
    double vertical = Math.max(0, horizontal - height * share);
    boolean flat = limits.rule == UpperCutoff.HORIZONTAL;
    double right =
        switch (limits.rule) {
          case NONE, HORIZONTAL -> horizontal;
          case INTERMEDIATE -> intermediate;
          case VERTICAL -> vertical;
        };
    var first = scale.term(all) + " − ";
    var substitution =
        switch (limits.rule) {
          case NONE, HORIZONTAL -> first + scale.term(above);
          case INTERMEDIATE -> first + "2 × " + scale.term(above);
          case VERTICAL ->
              first
                  + scale.term(above)
                  + " − "
                  + scale.term(height)
                  + " × "
                  + scale.words().number(share, 4);
        };
    var working =
        scale.step(
            Working.of(scale.words().say("hot.title")),
            "hot." + code(limits.rule),
            substitution,
            scale.sumText(right));
    return new SolvedPart(
        scale.answer(right),
        working,
        List.of(
            scale.slip(DegreeDayMistake.CUTOFF_IGNORED, all),
            scale.slip(DegreeDayMistake.CUTOFF_ADDED, all + above),
            scale.slip(DegreeDayMistake.CUTOFF_RULE_CONFUSED, flat ? intermediate : horizontal)));
  }
}
