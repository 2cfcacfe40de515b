package agro.course.topic.development;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.development.rate.RearingMean;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What share of a stage is done after some days at a constant temperature. */
final class ShareDone implements ExerciseType {

  @Override
  public String code() {
    return "development-share";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEVELOPMENT;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DevelopmentMistake.QUOTIENT_TURNED,
        DevelopmentMistake.REST_FOR_DONE,
        DevelopmentMistake.FRACTION_FOR_PERCENT);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DevelopmentScale.of(context, "share.title");
    double at = scale.fahrenheit() ? draw.step(60, 82, 1) : draw.step(15, 28, 1);
    double duration = draw.step(8, 30, 0.5);
    double days = Math.max(2, Math.floor(duration * draw.step(0.2, 0.85, 0.05)));
    var words = scale.words();
    return ExerciseBody.titled(scale.title())
        .story(
            words.say(
                "share.story",
                "pest",
                draw.oneOf(context.setting().pests()),
                "at",
                scale.degrees(at),
                "duration",
                words.exact(duration)))
        .givens(
            Givens.none()
                .withNumber("at", at)
                .withNumber("duration", duration)
                .withNumber("days", days))
        .part(
            words.say("share.question", "days", words.exact(days), "at", scale.degrees(at)),
            earlier -> solve(scale, at, duration, days))
        .build();
  }

  private static SolvedPart solve(DevelopmentScale scale, double at, double duration, double days) {
    double share = days * RearingMean.of(scale.celsius(at), duration).rate();
    var words = scale.words();
    var working =
        scale.step("rate", "1 / " + scale.term(duration), words.number(1 / duration) + " 1/d");
    return new SolvedPart(
        PercentAnswer.rounded(100 * share, 1),
        scale.step(
            working,
            "share",
            scale.term(days) + " / " + scale.term(duration) + " × 100 %",
            words.number(100 * share, 1) + " %"),
        List.of(
            slip(DevelopmentMistake.QUOTIENT_TURNED, 100 * duration / days),
            slip(DevelopmentMistake.REST_FOR_DONE, 100 - 100 * share),
            slip(DevelopmentMistake.FRACTION_FOR_PERCENT, share)));
  }

  private static TypicalSlip slip(DevelopmentMistake mistake, double percent) {
    return new TypicalSlip(mistake, PercentAnswer.rounded(percent, 1));
  }
}
