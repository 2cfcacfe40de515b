package agro.course.topic.sampling;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExamAid;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.source.SamplingBibliography;
import java.util.Set;

/** What two given stop lines say after so many plants. */
final class StopLineReading {

  private StopLineReading() {}

  /** Slope, distance of both lines from the middle, plants and animals. */
  private record Plan(double slope, double low, double high, int plants, int total) {
    double lowLine() {
      return low + slope * plants;
    }

    double highLine() {
      return high + slope * plants;
    }
  }

  static ExerciseType type() {
    return new DeclaredType(
        "sampling-stop-reading",
        CourseTopic.SAMPLING,
        Set.of(Difficulty.ROUTINE),
        Set.of(
            SamplingMistake.ROUNDED_DOWN,
            SamplingMistake.ROUNDED_UP,
            SamplingMistake.INTERCEPT_LEFT_OUT,
            SamplingMistake.LINES_EXCHANGED,
            SamplingMistake.MIDDLE_DECIDES,
            SamplingMistake.LINE_NOT_NOTICED),
        StopLineReading::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    double slope = draw.step(0.6, 2.6, 0.05);
    double low = -draw.step(3, 9, 0.1);
    double high = draw.step(3, 9, 0.1);
    int plants = draw.whole((int) Math.ceil((1.5 - low) / slope) + 1, 30);
    double middle = slope * plants;
    var verdict = new StopLineVerdict(low + middle, high + middle, middle);
    int total = verdict.total(draw);
    var plan = new Plan(slope, low, high, plants, total);
    var pest = draw.oneOf(context.setting().pests());
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(SamplingExercises.class, "sampling");
    return ExerciseBody.titled(words.say("reading.title"))
        .story(
            words.say(
                "reading.story",
                "pest",
                pest,
                "field",
                field,
                "slope",
                words.exact(slope),
                "low",
                words.exact(-low),
                "high",
                words.exact(high)))
        .givens(
            Givens.none()
                .withNumber("slope", slope)
                .withNumber("low", low)
                .withNumber("high", high)
                .withNumber("plants", plants)
                .withNumber("total", total))
        .aid(ExamAid.STOP_LINE_PAPER)
        .source(SamplingBibliography.WALD_1947)
        .part(words.say("reading.question.high", "n", plants), earlier -> high(plan, words))
        .part(words.say("reading.question.low", "n", plants), earlier -> low(plan, words))
        .part(
            words.say("stop.question.verdict", "n", plants, "total", total),
            earlier -> reached(plan, earlier, words))
        .build();
  }

  private static NumberAnswer animals(double whole) {
    return NumberAnswer.whole(Math.round(whole));
  }

  private static SolvedPart high(Plan plan, CourseWords words) {
    double line = plan.highLine();
    double least = Math.ceil(line - 1e-9);
    var draft = SolutionDraft.titled(words, words.say("reading.high.step"));
    if (least - line > 1e-6) {
      draft.slip(SamplingMistake.ROUNDED_DOWN, animals(least - 1));
    }
    return draft
        .step(
            "reading.high",
            words.exact(plan.slope()) + " × " + plan.plants() + " + " + words.exact(plan.high()),
            words.number(line))
        .step("reading.round.high", "", words.exact(least))
        .slip(SamplingMistake.LINES_EXCHANGED, animals(Math.floor(plan.lowLine() + 1e-9)))
        .slip(
            SamplingMistake.INTERCEPT_LEFT_OUT,
            animals(Math.ceil(plan.slope() * plan.plants() - 1e-9)))
        .answer(animals(least));
  }

  private static SolvedPart low(Plan plan, CourseWords words) {
    double line = plan.lowLine();
    double most = Math.floor(line + 1e-9);
    var draft = SolutionDraft.titled(words, words.say("reading.low.step"));
    if (line - most > 1e-6) {
      draft.slip(SamplingMistake.ROUNDED_UP, animals(most + 1));
    }
    return draft
        .step(
            "reading.low",
            words.exact(plan.slope()) + " × " + plan.plants() + " − " + words.exact(-plan.low()),
            words.number(line))
        .step("reading.round.low", "", words.exact(most))
        .slip(SamplingMistake.LINES_EXCHANGED, animals(Math.ceil(plan.highLine() - 1e-9)))
        .slip(
            SamplingMistake.INTERCEPT_LEFT_OUT,
            animals(Math.floor(plan.slope() * plan.plants() + 1e-9)))
        .answer(animals(most));
  }

  private static SolvedPart reached(Plan plan, EarlierAnswers earlier, CourseWords words) {
    double high = earlier.number(0);
    double low = earlier.number(1);
    return new StopLineVerdict(low, high, plan.slope() * plan.plants()).solve(plan.total(), words);
  }
}
