package agro.course.topic.sampling;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.source.SamplingBibliography;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Mean, variance and standard error of the counts on a dozen plants. */
final class SpreadOfCounts {

  private SpreadOfCounts() {}

  static ExerciseType type() {
    return new DeclaredType(
        "sampling-spread",
        CourseTopic.SAMPLING,
        Set.of(Difficulty.ROUTINE),
        Set.of(
            SamplingMistake.ZEROS_LEFT_OUT,
            SamplingMistake.ONE_LESS_IN_MEAN,
            SamplingMistake.TOTAL_FOR_MEAN,
            SamplingMistake.ALL_UNITS_IN_VARIANCE,
            SamplingMistake.ROOT_TAKEN,
            SamplingMistake.SQUARES_NOT_DIVIDED,
            SamplingMistake.DEVIATION_FOR_ERROR,
            SamplingMistake.ERROR_WITHOUT_ROOT,
            SamplingMistake.ROOT_OF_UNITS_FORGOTTEN),
        SpreadOfCounts::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var sample = sample(draw);
    var pest = draw.oneOf(context.setting().pests());
    var field = draw.oneOf(context.setting().fields());
    var crop = draw.oneOf(context.setting().crops());
    var words = context.words().in(SamplingExercises.class, "sampling");
    var counts = sample.counts().stream().map(Integer::doubleValue).toList();
    return ExerciseBody.titled(words.say("spread.title"))
        .story(
            words.say(
                "spread.story", "pest", pest, "field", field, "crop", crop, "n", sample.size()))
        .exhibit(
            CountTables.row(
                words.say("table.counts"), words.say("plant"), 1, words.say("count"), counts))
        .givens(Givens.none().withNumbers("counts", counts))
        .source(SamplingBibliography.SOUTHWOOD_1978)
        .part(words.say("mean.question"), earlier -> mean(sample, words))
        .part(words.say("variance.question"), earlier -> variance(sample, earlier, words))
        .part(words.say("error.question"), earlier -> error(sample, earlier, words))
        .build();
  }

  private static CountSample sample(ExerciseDraw draw) {
    int n = draw.whole(8, 12);
    double mean = draw.sensible(1.5, 6, 2);
    double k = draw.sensible(0.8, 3, 2);
    while (true) {
      var counts = new ArrayList<Integer>();
      for (int i = 0; i < n; i++) {
        counts.add(draw.clumped(mean, k));
      }
      var sample = new CountSample("", SamplingUnit.of(SamplingUnit.Kind.PLANT), counts);
      if (sample.total() > n / 2 && sample.variance() > sample.mean() && sample.largest() < 25) {
        return sample;
      }
    }
  }

  /** The mean of counts that stand in a list. */
  static SolvedPart mean(CountSample sample, CourseWords words) {
    int n = sample.size();
    int zeros = sample.unitsWith(0);
    var draft =
        SolutionDraft.titled(words, words.say("mean.step"))
            .step(
                "total",
                sample.counts().stream().map(Object::toString).collect(Collectors.joining(" + ")),
                Long.toString(sample.total()))
            .step("mean", sample.total() + " / " + n, words.number(sample.mean()));
    if (zeros > 0 && zeros < n) {
      draft.slip(
          SamplingMistake.ZEROS_LEFT_OUT,
          NumberAnswer.computed((double) sample.total() / (n - zeros), 2));
    }
    return draft
        .slip(SamplingMistake.TOTAL_FOR_MEAN, NumberAnswer.computed((double) sample.total(), 2))
        .slip(
            SamplingMistake.ONE_LESS_IN_MEAN,
            NumberAnswer.computed((double) sample.total() / (n - 1), 2))
        .answer(NumberAnswer.computed(sample.mean(), 2));
  }

  /** The sum of squares about any mean is the least one and what the mean is off. */
  private static double squares(CountSample sample, double mean) {
    double off = sample.mean() - mean;
    return sample.variance() * (sample.size() - 1) + sample.size() * off * off;
  }

  private static SolvedPart variance(
      CountSample sample, EarlierAnswers earlier, CourseWords words) {
    int n = sample.size();
    double mean = earlier.number(0);
    double squares = squares(sample, mean);
    double variance = squares / (n - 1);
    return SolutionDraft.titled(words, words.say("variance.step"))
        .step("squares", deviations(sample.counts(), mean, words), words.number(squares))
        .step("variance", words.number(squares) + " / (" + n + " − 1)", words.number(variance))
        .slip(SamplingMistake.ALL_UNITS_IN_VARIANCE, NumberAnswer.computed(squares / n, 2))
        .slip(SamplingMistake.ROOT_TAKEN, NumberAnswer.computed(Math.sqrt(variance), 2))
        .slip(SamplingMistake.SQUARES_NOT_DIVIDED, NumberAnswer.computed(squares, 2))
        .answer(NumberAnswer.computed(variance, 2));
  }

  private static String deviations(List<Integer> counts, double mean, CourseWords words) {
    return counts.stream()
        .map(x -> "(" + x + " − " + words.number(mean, 2) + ")²")
        .collect(Collectors.joining(" + "));
  }

  private static SolvedPart error(CountSample sample, EarlierAnswers earlier, CourseWords words) {
    return IntervalOfMean.error(sample.size(), earlier.number(1), words);
  }
}
