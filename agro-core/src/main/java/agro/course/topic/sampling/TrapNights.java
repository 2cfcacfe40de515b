package agro.course.topic.sampling;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.source.Reference;
import java.util.Set;

/** Moths for each night of an open trap, where one trap was out of order for some nights. */
final class TrapNights {

  private static final int MOST_TRAPS = 8;
  private static final int MOST_NIGHTS = 14;

  private TrapNights() {}

  static ExerciseType type() {
    return new DeclaredType(
        "sampling-trap-night",
        CourseTopic.SAMPLING,
        Set.of(Difficulty.BASIC),
        Set.of(
            SamplingMistake.FAILED_NIGHTS_COUNTED,
            SamplingMistake.NIGHTS_LEFT_OUT,
            SamplingMistake.TRAPS_LEFT_OUT),
        TrapNights::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    int traps = draw.whole(2, MOST_TRAPS);
    int nights = draw.whole(5, MOST_NIGHTS);
    int failed = draw.whole(2, nights - 2);
    int caught = draw.whole(2 * traps * nights, 9 * traps * nights);
    var pest = draw.oneOf(context.setting().pests());
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(SamplingExercises.class, "sampling");
    return ExerciseBody.titled(words.say("trap.title"))
        .story(
            words.say(
                "trap.story",
                "pest",
                pest,
                "field",
                field,
                "traps",
                traps,
                "nights",
                nights,
                "failed",
                failed,
                "caught",
                caught))
        .givens(
            Givens.none()
                .withNumber("traps", traps)
                .withNumber("nights", nights)
                .withNumber("failed", failed)
                .withNumber("caught", caught))
        .source(Reference.commonPractice("Catches are compared for each night of an open trap"))
        .part(words.say("trap.question"), earlier -> solve(traps, nights, failed, caught, words))
        .build();
  }

  private static SolvedPart solve(
      int traps, int nights, int failed, int caught, CourseWords words) {
    int open = traps * nights - failed;
    var unit = words.say("per.trap.night");
    double rate = (double) caught / open;
    return SolutionDraft.titled(words, words.say("trap.title"))
        .step("trap.nights", traps + " × " + nights + " − " + failed, Integer.toString(open))
        .step("trap.rate", caught + " / " + open, words.number(rate) + " " + unit)
        .slip(
            SamplingMistake.FAILED_NIGHTS_COUNTED,
            NumberAnswer.computed((double) caught / (traps * nights), 2, unit))
        .slip(
            SamplingMistake.NIGHTS_LEFT_OUT,
            NumberAnswer.computed((double) caught / traps, 2, unit))
        .slip(
            SamplingMistake.TRAPS_LEFT_OUT,
            NumberAnswer.computed((double) caught / nights, 2, unit))
        .answer(NumberAnswer.computed(rate, 2, unit));
  }
}
