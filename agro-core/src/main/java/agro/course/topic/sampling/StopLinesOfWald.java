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
import agro.sampling.sequential.CountFamily;
import agro.sampling.sequential.WaldLines;
import agro.source.SamplingBibliography;
import java.util.List;
import java.util.Set;

/** Slope and intercepts of Wald's stop lines, and what they say of a total. */
final class StopLinesOfWald {

  private static final List<List<Double>> CHANCES =
      List.of(List.of(0.1, 0.1), List.of(0.05, 0.1), List.of(0.1, 0.05), List.of(0.2, 0.1));

  private StopLinesOfWald() {}

  /** A test and what has been counted. */
  private record Test(WaldLines lines, int plants, int total) {
    boolean clumped() {
      return lines.family() instanceof CountFamily.Clumped;
    }

    double k() {
      return lines.family() instanceof CountFamily.Clumped family ? family.k() : Double.NaN;
    }
  }

  static ExerciseType type() {
    return new DeclaredType(
        "sampling-stop-lines",
        CourseTopic.SAMPLING,
        Set.of(Difficulty.DEMANDING),
        Set.of(
            SamplingMistake.MIDDLE_OF_MEANS,
            SamplingMistake.COMMON_LOGARITHM,
            SamplingMistake.UPSIDE_DOWN,
            SamplingMistake.CLUMPING_IGNORED,
            SamplingMistake.LINES_EXCHANGED,
            SamplingMistake.CHANCES_EXCHANGED,
            SamplingMistake.WEIGHT_LEFT_OUT,
            SamplingMistake.SLOPE_AS_WEIGHT,
            SamplingMistake.MIDDLE_DECIDES,
            SamplingMistake.LINE_NOT_NOTICED),
        StopLinesOfWald::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    double low = draw.step(0.5, 1.5, 0.1);
    double high = draw.step(low + 0.5, 2.2 * low + 0.5, 0.1);
    var chances = draw.oneOf(CHANCES);
    boolean clumped = draw.whole(0, 1) == 1;
    double k = draw.step(1, 4, 0.5);
    var family = clumped ? new CountFamily.Clumped(k) : new CountFamily.AtRandom();
    var lines = WaldLines.of(family, low, high, chances.get(0), chances.get(1));
    int first = (int) Math.ceil((1.5 - lines.lowIntercept()) / lines.slope());
    int plants = first + draw.whole(0, 15);
    double middle = lines.slope() * plants;
    int total = new StopLineVerdict(lines.low(plants), lines.high(plants), middle).total(draw);
    var test = new Test(lines, plants, total);
    var pest = draw.oneOf(context.setting().pests());
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(SamplingExercises.class, "sampling");
    return ExerciseBody.titled(words.say("stop.title"))
        .story(
            words.say(
                "stop.story",
                "pest",
                pest,
                "field",
                field,
                "low",
                words.exact(low),
                "high",
                words.exact(high),
                "alpha",
                words.exact(lines.alpha()),
                "beta",
                words.exact(lines.beta())))
        .story(
            clumped
                ? words.say("stop.story.clumped", "k", words.exact(k))
                : words.say("stop.story.random"))
        .givens(
            Givens.none()
                .withNumber("low", low)
                .withNumber("high", high)
                .withNumber("alpha", lines.alpha())
                .withNumber("beta", lines.beta())
                .withNumber("k", clumped ? k : 0)
                .withNumber("plants", plants)
                .withNumber("total", total))
        .aid(ExamAid.STOP_LINE_PAPER)
        .source(SamplingBibliography.WALD_1947)
        .part(words.say("stop.question.slope"), earlier -> slope(test, words))
        .part(words.say("stop.question.low"), earlier -> low(test, words))
        .part(words.say("stop.question.high"), earlier -> high(test, words))
        .part(
            words.say("stop.question.verdict", "n", plants, "total", total),
            earlier -> reached(test, earlier, words))
        .build();
  }

  private static SolutionDraft weight(Test test, CourseWords words, String title) {
    var lines = test.lines();
    var low = words.exact(lines.lowMean());
    var high = words.exact(lines.highMean());
    var draft = SolutionDraft.titled(words, words.say(title));
    var d = words.number(lines.weight());
    if (!test.clumped()) {
      return draft.step("stop.weight.random", "ln(" + high + " / " + low + ")", d);
    }
    var k = words.exact(test.k());
    return draft.step(
        "stop.weight.clumped",
        "ln(" + high + " × (" + k + " + " + low + ") / (" + low + " × (" + k + " + " + high + ")))",
        d);
  }

  private static SolvedPart slope(Test test, CourseWords words) {
    var lines = test.lines();
    double m0 = lines.lowMean();
    double m1 = lines.highMean();
    var draft = weight(test, words, "stop.slope.step");
    var s = words.number(lines.slope());
    var d = words.number(lines.weight());
    double random = new CountFamily.AtRandom().slope(m0, m1);
    if (test.clumped()) {
      var k = words.exact(test.k());
      draft
          .step(
              "stop.slope.clumped",
              k
                  + " × ln(("
                  + k
                  + " + "
                  + words.exact(m1)
                  + ") / ("
                  + k
                  + " + "
                  + words.exact(m0)
                  + ")) / "
                  + d,
              s)
          .slip(SamplingMistake.CLUMPING_IGNORED, NumberAnswer.computed(random, 3));
    } else {
      draft
          .step(
              "stop.slope.random", "(" + words.exact(m1) + " − " + words.exact(m0) + ") / " + d, s)
          .slip(
              SamplingMistake.COMMON_LOGARITHM,
              NumberAnswer.computed((m1 - m0) / Math.log10(m1 / m0), 3))
          .slip(SamplingMistake.UPSIDE_DOWN, NumberAnswer.computed(1 / lines.slope(), 3));
    }
    return draft
        .slip(SamplingMistake.MIDDLE_OF_MEANS, NumberAnswer.computed((m0 + m1) / 2, 3))
        .answer(NumberAnswer.computed(lines.slope(), 3));
  }

  private static SolvedPart low(Test test, CourseWords words) {
    var lines = test.lines();
    double d = lines.weight();
    var draft =
        weight(test, words, "stop.low.step")
            .step(
                "stop.low",
                "ln("
                    + words.exact(lines.beta())
                    + " / (1 − "
                    + words.exact(lines.alpha())
                    + ")) / "
                    + words.number(d),
                words.number(lines.lowIntercept()))
            .slip(SamplingMistake.LINES_EXCHANGED, NumberAnswer.computed(lines.highIntercept(), 2))
            .slip(
                SamplingMistake.WEIGHT_LEFT_OUT, NumberAnswer.computed(lines.lowIntercept() * d, 2))
            .slip(
                SamplingMistake.SLOPE_AS_WEIGHT,
                NumberAnswer.computed(lines.lowIntercept() * d / lines.slope(), 2));
    if (lines.alpha() != lines.beta()) {
      draft.slip(
          SamplingMistake.CHANCES_EXCHANGED,
          NumberAnswer.computed(exchanged(lines).lowIntercept(), 2));
    }
    return draft.answer(NumberAnswer.computed(lines.lowIntercept(), 2));
  }

  private static WaldLines exchanged(WaldLines lines) {
    double inPlaceOfAlpha = lines.beta();
    double inPlaceOfBeta = lines.alpha();
    return WaldLines.of(
        lines.family(), lines.lowMean(), lines.highMean(), inPlaceOfAlpha, inPlaceOfBeta);
  }

  private static SolvedPart high(Test test, CourseWords words) {
    var lines = test.lines();
    double d = lines.weight();
    var draft =
        weight(test, words, "stop.high.step")
            .step(
                "stop.high",
                "ln((1 − "
                    + words.exact(lines.beta())
                    + ") / "
                    + words.exact(lines.alpha())
                    + ") / "
                    + words.number(d),
                words.number(lines.highIntercept()))
            .slip(SamplingMistake.LINES_EXCHANGED, NumberAnswer.computed(lines.lowIntercept(), 2))
            .slip(
                SamplingMistake.WEIGHT_LEFT_OUT,
                NumberAnswer.computed(lines.highIntercept() * d, 2))
            .slip(
                SamplingMistake.SLOPE_AS_WEIGHT,
                NumberAnswer.computed(lines.highIntercept() * d / lines.slope(), 2));
    if (lines.alpha() != lines.beta()) {
      draft.slip(
          SamplingMistake.CHANCES_EXCHANGED,
          NumberAnswer.computed(exchanged(lines).highIntercept(), 2));
    }
    return draft.answer(NumberAnswer.computed(lines.highIntercept(), 2));
  }

  private static SolvedPart reached(Test test, EarlierAnswers earlier, CourseWords words) {
    double middle = earlier.number(0) * test.plants();
    return new StopLineVerdict(earlier.number(1) + middle, earlier.number(2) + middle, middle)
        .solve(test.total(), words);
  }
}
