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
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.development.Span;
import agro.source.Reference;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How long the stages last, and their shares where animals of all ages live side by side. */
final class StageShares implements ExerciseType {

  private static final double ROUNDED_DAYS = 0.3;

  private record Plan(double lower, double egg, double larva, double pupa, double at) {}

  @Override
  public String code() {
    return "development-stages";
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
        DevelopmentMistake.THRESHOLD_FORGOTTEN,
        DevelopmentMistake.THRESHOLD_ADDED,
        DevelopmentMistake.EGG_LEFT_OUT,
        DevelopmentMistake.WHOLE_FOR_STAGE,
        DevelopmentMistake.EQUAL_SHARES,
        DevelopmentMistake.REST_FOR_DONE);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DevelopmentScale.of(context, "stages.title");
    boolean fahrenheit = scale.fahrenheit();
    double unit = fahrenheit ? 2 : 1;
    var plan =
        new Plan(
            fahrenheit ? draw.step(43, 52, 1) : draw.step(6, 11, 0.5),
            draw.step(40, 90, 5) * unit,
            draw.step(130, 260, 5) * unit,
            draw.step(80, 150, 5) * unit,
            fahrenheit ? draw.step(63, 81, 1) : draw.step(17, 27, 1));
    var pest = draw.oneOf(context.setting().pests());
    var words = scale.words();
    return ExerciseBody.titled(scale.title())
        .story(
            words.say(
                "stages.story",
                "pest",
                pest,
                "lower",
                scale.degrees(plan.lower),
                "egg",
                scale.exactSum(plan.egg),
                "larva",
                scale.exactSum(plan.larva),
                "pupa",
                scale.exactSum(plan.pupa),
                "at",
                scale.degrees(plan.at)))
        .givens(
            Givens.none()
                .withNumber("lower", plan.lower)
                .withNumber("egg", plan.egg)
                .withNumber("larva", plan.larva)
                .withNumber("pupa", plan.pupa)
                .withNumber("at", plan.at))
        .part(words.say("stages.question.larva"), earlier -> larva(scale, plan, pest))
        .part(words.say("stages.question.all"), earlier -> all(scale, plan, pest))
        .part(words.say("stages.question.share"), earlier -> share(scale, earlier))
        .source(
            Reference.commonPractice(
                "Stages of an even population are as frequent as they last long"))
        .build();
  }

  private static SolvedPart larva(DevelopmentScale scale, Plan plan, String pest) {
    double right =
        scale
            .requirement(pest, Span.LARVA, plan.lower, scale.sum(plan.larva))
            .daysAt(scale.celsius(plan.at));
    return new SolvedPart(
        scale.daysAnswer(right),
        scale.step("constant", quotient(scale, plan.larva, plan), scale.daysText(right)),
        List.of(
            scale.daysSlip(DevelopmentMistake.THRESHOLD_FORGOTTEN, plan.larva / plan.at),
            scale.daysSlip(
                DevelopmentMistake.THRESHOLD_ADDED, plan.larva / (plan.at + plan.lower))));
  }

  private static String quotient(DevelopmentScale scale, double sum, Plan plan) {
    return scale.term(sum) + " / (" + scale.term(plan.at) + " − " + scale.term(plan.lower) + ")";
  }

  private static SolvedPart all(DevelopmentScale scale, Plan plan, String pest) {
    var whole =
        scale
            .requirement(pest, Span.EGG, plan.lower, scale.sum(plan.egg))
            .plus(scale.requirement(pest, Span.LARVA, plan.lower, scale.sum(plan.larva)))
            .plus(scale.requirement(pest, Span.PUPA, plan.lower, scale.sum(plan.pupa)));
    double sum = scale.number(whole.requirement());
    double right = whole.daysAt(scale.celsius(plan.at));
    var working =
        scale.step(
            "stages.sum",
            scale.term(plan.egg) + " + " + scale.term(plan.larva) + " + " + scale.term(plan.pupa),
            scale.sumText(sum));
    return new SolvedPart(
        scale.daysAnswer(right),
        scale.step(working, "constant", quotient(scale, sum, plan), scale.daysText(right)),
        List.of(
            scale.daysSlip(DevelopmentMistake.THRESHOLD_FORGOTTEN, sum / plan.at),
            scale.daysSlip(
                DevelopmentMistake.EGG_LEFT_OUT, (sum - plan.egg) / (plan.at - plan.lower))));
  }

  private static SolvedPart share(DevelopmentScale scale, EarlierAnswers earlier) {
    double larva = earlier.number(0);
    double all = earlier.number(1);
    if (!(larva > 0 && all > larva)) {
      throw new IllegalArgumentException("a stage is a part of the whole development");
    }
    double right = 100 * larva / all;
    return new SolvedPart(
        share(right),
        scale.step(
            "stages.share",
            scale.term(larva) + " / " + scale.term(all) + " × 100 %",
            scale.words().number(right, 1) + " %"),
        List.of(
            percent(DevelopmentMistake.EQUAL_SHARES, 100.0 / 3),
            percent(DevelopmentMistake.WHOLE_FOR_STAGE, 100 * larva / (all - larva)),
            percent(DevelopmentMistake.REST_FOR_DONE, 100 - right)));
  }

  private static TypicalSlip percent(DevelopmentMistake mistake, double percent) {
    return new TypicalSlip(mistake, share(percent));
  }

  /** Days with one decimal leave about so much of a share. */
  private static PercentAnswer share(double percent) {
    return new PercentAnswer(
        percent, 1, new AnswerTolerance(ROUNDED_DAYS, AnswerTolerance.Reason.DECIMALS));
  }
}
