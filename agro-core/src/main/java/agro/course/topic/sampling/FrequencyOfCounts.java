package agro.course.topic.sampling;

import agro.course.AnswerTolerance;
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

/** Clumping of counts that are given as a table of how often each count came. */
final class FrequencyOfCounts {

  private static final int LARGEST_COUNT = 9;
  private static final double LEAST_VARIANCE_TO_MEAN = 1.4;

  /** k is a quotient of two rounded numbers, one of them a difference. */
  private static final double SHARE_OF_K = 0.015;

  private FrequencyOfCounts() {}

  static ExerciseType type() {
    return new DeclaredType(
        "sampling-frequencies",
        CourseTopic.SAMPLING,
        Set.of(Difficulty.DEMANDING),
        Set.of(
            SamplingMistake.CLASSES_FOR_PLANTS,
            SamplingMistake.ZEROS_LEFT_OUT,
            SamplingMistake.ALL_UNITS_IN_VARIANCE,
            SamplingMistake.MEAN_NOT_TAKEN_OFF,
            SamplingMistake.ROOT_TAKEN,
            SamplingMistake.MEAN_LEFT_IN_K,
            SamplingMistake.MEAN_NOT_SQUARED,
            SamplingMistake.UPSIDE_DOWN,
            SamplingMistake.VARIANCE_RATIO_ALONE,
            SamplingMistake.ANIMAL_ITSELF_COUNTED),
        FrequencyOfCounts::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var sample = sample(draw);
    var pest = draw.oneOf(context.setting().pests());
    var field = draw.oneOf(context.setting().fields());
    var crop = draw.oneOf(context.setting().crops());
    var words = context.words().in(SamplingExercises.class, "sampling");
    var plants = new ArrayList<Double>();
    for (int x = 0; x <= sample.largest(); x++) {
      plants.add((double) sample.unitsWith(x));
    }
    return ExerciseBody.titled(words.say("frequency.title"))
        .story(
            words.say(
                "frequency.story", "pest", pest, "field", field, "crop", crop, "n", sample.size()))
        .exhibit(
            CountTables.row(
                words.say("table.frequencies"),
                words.say("count.on.plant"),
                0,
                words.say("plants"),
                plants))
        .givens(Givens.none().withNumbers("plants", plants))
        .source(SamplingBibliography.BLISS_FISHER_1953)
        .source(SamplingBibliography.LLOYD_1967)
        .part(words.say("mean.question.three"), earlier -> mean(sample, words))
        .part(words.say("variance.question.three"), earlier -> variance(sample, earlier, words))
        .part(words.say("k.question"), earlier -> exponent(earlier, words))
        .part(words.say("crowding.question"), earlier -> crowding(earlier, words))
        .build();
  }

  private static CountSample sample(ExerciseDraw draw) {
    int n = 10 * draw.whole(4, 6);
    double mean = draw.sensible(0.8, 2, 2);
    double k = draw.sensible(0.6, 1.5, 2);
    while (true) {
      var counts = new ArrayList<Integer>();
      for (int i = 0; i < n; i++) {
        counts.add(draw.clumped(mean, k));
      }
      var sample = new CountSample("", SamplingUnit.of(SamplingUnit.Kind.PLANT), counts);
      if (sample.largest() >= 4
          && sample.largest() <= LARGEST_COUNT
          && sample.variance() > LEAST_VARIANCE_TO_MEAN * sample.mean()) {
        return sample;
      }
    }
  }

  private static SolvedPart mean(CountSample sample, CourseWords words) {
    int n = sample.size();
    double total = sample.total();
    return SolutionDraft.titled(words, words.say("mean.step"))
        .step("frequency.total", products(sample, false), words.exact(total))
        .step("mean", words.exact(total) + " / " + n, words.number(sample.mean()))
        .slip(
            SamplingMistake.CLASSES_FOR_PLANTS,
            NumberAnswer.computed(total / (sample.largest() + 1), 3))
        .slip(
            SamplingMistake.ZEROS_LEFT_OUT,
            NumberAnswer.computed(total / (n - sample.unitsWith(0)), 3))
        .answer(NumberAnswer.computed(sample.mean(), 3));
  }

  private static String products(CountSample sample, boolean squared) {
    var text = new StringBuilder();
    for (int x = 1; x <= sample.largest(); x++) {
      if (sample.unitsWith(x) > 0) {
        text.append(text.length() == 0 ? "" : " + ")
            .append(sample.unitsWith(x))
            .append(" × ")
            .append(x)
            .append(squared ? "²" : "");
      }
    }
    return text.toString();
  }

  private static SolvedPart variance(
      CountSample sample, EarlierAnswers earlier, CourseWords words) {
    int n = sample.size();
    double mean = earlier.number(0);
    double off = sample.mean() - mean;
    double squares = sample.variance() * (n - 1) + n * off * off;
    double variance = squares / (n - 1);
    double raw = sample.squares();
    return SolutionDraft.titled(words, words.say("variance.step"))
        .step("frequency.squares", products(sample, true), words.exact(raw))
        .step(
            "frequency.variance",
            "("
                + words.exact(raw)
                + " − "
                + words.exact((double) sample.total())
                + "² / "
                + n
                + ") / ("
                + n
                + " − 1)",
            words.number(variance))
        .slip(SamplingMistake.ALL_UNITS_IN_VARIANCE, NumberAnswer.computed(squares / n, 3))
        .slip(SamplingMistake.MEAN_NOT_TAKEN_OFF, NumberAnswer.computed(raw / (n - 1), 3))
        .slip(SamplingMistake.ROOT_TAKEN, NumberAnswer.computed(Math.sqrt(variance), 3))
        .answer(NumberAnswer.computed(variance, 3));
  }

  private static SolvedPart exponent(EarlierAnswers earlier, CourseWords words) {
    double mean = earlier.number(0);
    double variance = earlier.number(1);
    if (!(variance > mean)) {
      throw new IllegalArgumentException("counts at random have no exponent");
    }
    double k = mean * mean / (variance - mean);
    return SolutionDraft.titled(words, words.say("k.step"))
        .step(
            "k",
            words.number(mean)
                + "² / ("
                + words.number(variance)
                + " − "
                + words.number(mean)
                + ")",
            words.number(k))
        .slip(SamplingMistake.MEAN_LEFT_IN_K, near(mean * mean / variance))
        .slip(SamplingMistake.MEAN_NOT_SQUARED, near(mean / (variance - mean)))
        .slip(SamplingMistake.UPSIDE_DOWN, near(1 / k))
        .answer(near(k));
  }

  private static NumberAnswer near(double k) {
    return new NumberAnswer(k, 2, AnswerTolerance.share(k, SHARE_OF_K), List.of());
  }

  private static SolvedPart crowding(EarlierAnswers earlier, CourseWords words) {
    double mean = earlier.number(0);
    double ratio = earlier.number(1) / mean;
    double crowding = mean + ratio - 1;
    return SolutionDraft.titled(words, words.say("crowding.step"))
        .step(
            "crowding",
            words.number(mean)
                + " + "
                + words.number(earlier.number(1))
                + " / "
                + words.number(mean)
                + " − 1",
            words.number(crowding))
        .slip(SamplingMistake.VARIANCE_RATIO_ALONE, NumberAnswer.computed(ratio, 2))
        .slip(SamplingMistake.ANIMAL_ITSELF_COUNTED, NumberAnswer.computed(mean + ratio, 2))
        .answer(NumberAnswer.computed(crowding, 2));
  }
}
