package agro.course.topic.sampling;

import agro.course.ChoiceAnswer;
import agro.course.ChoiceAnswer.AnswerChoice;
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
import java.util.List;
import java.util.Set;
import org.hipparchus.distribution.continuous.TDistribution;

/** Whether a threshold lies within the confidence interval of a mean. */
final class IntervalOfMean {

  private static final double TWO_SIDED = 0.975;
  private static final double ONE_SIDED = 0.95;
  private static final double NORMAL = 1.96;
  private static final int QUANTILE_DECIMALS = 3;

  /** Up to so many plants the wrong row of the table still shows in the answer. */
  private static final int MOST_PLANTS = 10;

  private IntervalOfMean() {}

  /** What is given: plants, mean, variance, threshold. */
  private record Sample(int n, double mean, double variance, double threshold) {}

  static ExerciseType type() {
    return new DeclaredType(
        "sampling-interval",
        CourseTopic.SAMPLING,
        Set.of(Difficulty.ROUTINE),
        Set.of(
            SamplingMistake.DEVIATION_FOR_ERROR,
            SamplingMistake.ERROR_WITHOUT_ROOT,
            SamplingMistake.ROOT_OF_UNITS_FORGOTTEN,
            SamplingMistake.NORMAL_FOR_STUDENT,
            SamplingMistake.UNITS_AS_DEGREES_OF_FREEDOM,
            SamplingMistake.ONE_SIDED_QUANTILE,
            SamplingMistake.MEAN_ALONE_JUDGED,
            SamplingMistake.INTERVAL_READ_BACKWARDS),
        IntervalOfMean::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    int n = draw.whole(6, MOST_PLANTS);
    double mean = draw.step(3, 15, 0.1);
    double variance = draw.sensible(mean, 3 * mean, 2);
    double half =
        new TDistribution(n - 1.0).inverseCumulativeProbability(TWO_SIDED)
            * Math.sqrt(variance / n);
    double threshold = threshold(draw, mean, half);
    var sample = new Sample(n, mean, variance, threshold);
    var pest = draw.oneOf(context.setting().pests());
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(SamplingExercises.class, "sampling");
    return ExerciseBody.titled(words.say("interval.title"))
        .story(
            words.say(
                "interval.story",
                "pest",
                pest,
                "field",
                field,
                "n",
                n,
                "mean",
                words.exact(mean),
                "variance",
                words.exact(variance),
                "threshold",
                words.exact(threshold)))
        .givens(
            Givens.none()
                .withNumber("n", n)
                .withNumber("mean", mean)
                .withNumber("variance", variance)
                .withNumber("threshold", threshold))
        .aid(ExamAid.STUDENT_TABLE)
        .source(SamplingBibliography.SOUTHWOOD_1978)
        .part(words.say("error.question"), earlier -> error(n, variance, words))
        .part(words.say("interval.question.half"), earlier -> half(sample, earlier, words))
        .part(words.say("interval.question.verdict"), earlier -> verdict(sample, earlier, words))
        .build();
  }

  /** A threshold below, in or above the interval, never so near its end that rounding decides. */
  private static double threshold(ExerciseDraw draw, double mean, double half) {
    int place = draw.whole(-1, 1);
    double off = (place == 0 ? draw.share() - 0.5 : place * (1.3 + draw.share())) * half;
    double threshold = Math.rint(2 * (mean + off)) / 2;
    return Math.abs(Math.abs(threshold - mean) - half) < 0.1 * half
            || threshold < 0.5
            || threshold == mean
        ? threshold(draw, mean, half)
        : threshold;
  }

  /** The standard error of a mean. */
  static SolvedPart error(int n, double variance, CourseWords words) {
    double error = Math.sqrt(variance / n);
    return SolutionDraft.titled(words, words.say("error.step"))
        .step("error", "√(" + words.number(variance) + " / " + n + ")", words.number(error))
        .slip(SamplingMistake.DEVIATION_FOR_ERROR, NumberAnswer.computed(Math.sqrt(variance), 3))
        .slip(SamplingMistake.ERROR_WITHOUT_ROOT, NumberAnswer.computed(variance / n, 3))
        .slip(
            SamplingMistake.ROOT_OF_UNITS_FORGOTTEN,
            NumberAnswer.computed(Math.sqrt(variance) / n, 3))
        .answer(NumberAnswer.computed(error, 3));
  }

  private static SolvedPart half(Sample sample, EarlierAnswers earlier, CourseWords words) {
    double error = earlier.number(0);
    int n = sample.n();
    double t = new TDistribution(n - 1.0).inverseCumulativeProbability(TWO_SIDED);
    double next = new TDistribution(n).inverseCumulativeProbability(TWO_SIDED);
    double oneSided = new TDistribution(n - 1.0).inverseCumulativeProbability(ONE_SIDED);
    return SolutionDraft.titled(words, words.say("half.step"))
        .step("freedom", n + " − 1", Integer.toString(n - 1))
        .step("quantile", "", words.number(t, QUANTILE_DECIMALS))
        .step(
            "half",
            words.number(t, QUANTILE_DECIMALS) + " × " + words.number(error),
            words.number(t * error))
        .slip(SamplingMistake.NORMAL_FOR_STUDENT, NumberAnswer.computed(NORMAL * error, 3))
        .slip(SamplingMistake.UNITS_AS_DEGREES_OF_FREEDOM, NumberAnswer.computed(next * error, 3))
        .slip(SamplingMistake.ONE_SIDED_QUANTILE, NumberAnswer.computed(oneSided * error, 3))
        .answer(NumberAnswer.computed(t * error, 3));
  }

  private static SolvedPart verdict(Sample sample, EarlierAnswers earlier, CourseWords words) {
    double half = earlier.number(1);
    double low = sample.mean() - half;
    double high = sample.mean() + half;
    double threshold = sample.threshold();
    var choices =
        List.of(
            new AnswerChoice("below", words.say("verdict.below")),
            new AnswerChoice("above", words.say("verdict.above")),
            new AnswerChoice("open", words.say("verdict.open")));
    var code = high < threshold ? "below" : low > threshold ? "above" : "open";
    var draft =
        SolutionDraft.titled(words, words.say("limits.step"))
            .step(
                "limits",
                words.exact(sample.mean()) + " ± " + words.number(half),
                words.say("limits.result", "low", words.number(low), "high", words.number(high)))
            .step("verdict", words.exact(threshold), words.say("verdict." + code));
    var right = new ChoiceAnswer(choices, code);
    if (code.equals("open")) {
      draft.slip(
          SamplingMistake.MEAN_ALONE_JUDGED,
          right.withCode(sample.mean() < threshold ? "below" : "above"));
    } else {
      draft.slip(
          SamplingMistake.INTERVAL_READ_BACKWARDS,
          right.withCode(code.equals("below") ? "above" : "below"));
    }
    return draft.answer(right);
  }
}
