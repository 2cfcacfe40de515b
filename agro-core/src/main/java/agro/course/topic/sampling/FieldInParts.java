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
import java.util.Set;

/** The mean of a field whose edge and middle were counted apart. */
final class FieldInParts {

  private static final double PER_CENT = 100;

  private FieldInParts() {}

  /** Counts of both parts and the share of the edge in the field in per cent. */
  private record Parts(CountSample edge, CountSample middle, double percent) {}

  static ExerciseType type() {
    return new DeclaredType(
        "sampling-strata",
        CourseTopic.SAMPLING,
        Set.of(Difficulty.ROUTINE),
        Set.of(
            SamplingMistake.ZEROS_LEFT_OUT,
            SamplingMistake.ONE_LESS_IN_MEAN,
            SamplingMistake.TOTAL_FOR_MEAN,
            SamplingMistake.MEANS_AVERAGED,
            SamplingMistake.COUNTS_POOLED,
            SamplingMistake.WEIGHTS_EXCHANGED),
        FieldInParts::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    double percent = draw.step(10, 40, 5);
    double middle = draw.sensible(0.8, 2.5, 2);
    var parts =
        new Parts(
            sample(draw, 8, middle * draw.step(2, 4, 0.5)),
            sample(draw, draw.whole(5, 6), middle),
            percent);
    var pest = draw.oneOf(context.setting().pests());
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(SamplingExercises.class, "sampling");
    var edgeCounts = parts.edge().counts().stream().map(Integer::doubleValue).toList();
    var middleCounts = parts.middle().counts().stream().map(Integer::doubleValue).toList();
    return ExerciseBody.titled(words.say("strata.title"))
        .story(
            words.say(
                "strata.story",
                "pest",
                pest,
                "field",
                field,
                "edge",
                words.exact(percent),
                "middle",
                words.exact(PER_CENT - percent)))
        .exhibit(
            CountTables.row(
                words.say("strata.edge"), words.say("plant"), 1, words.say("count"), edgeCounts))
        .exhibit(
            CountTables.row(
                words.say("strata.middle"),
                words.say("plant"),
                1,
                words.say("count"),
                middleCounts))
        .givens(
            Givens.none()
                .withNumber("percent", percent)
                .withNumbers("edge", edgeCounts)
                .withNumbers("middle", middleCounts))
        .source(SamplingBibliography.COCHRAN_1977)
        .part(words.say("strata.question.edge"), e -> SpreadOfCounts.mean(parts.edge(), words))
        .part(words.say("strata.question.middle"), e -> SpreadOfCounts.mean(parts.middle(), words))
        .part(words.say("strata.question.field"), e -> field(parts, e, words))
        .build();
  }

  private static CountSample sample(ExerciseDraw draw, int n, double mean) {
    while (true) {
      var counts = new ArrayList<Integer>();
      for (int i = 0; i < n; i++) {
        counts.add(draw.poisson(mean));
      }
      var sample = new CountSample("", SamplingUnit.of(SamplingUnit.Kind.PLANT), counts);
      if (sample.total() > n / 2 && sample.largest() <= 30) {
        return sample;
      }
    }
  }

  private static SolvedPart field(Parts parts, EarlierAnswers earlier, CourseWords words) {
    double edge = earlier.number(0);
    double middle = earlier.number(1);
    double share = parts.percent() / PER_CENT;
    double rest = 1 - share;
    double mean = share * edge + rest * middle;
    int units = parts.edge().size() + parts.middle().size();
    double total = parts.edge().size() * edge + parts.middle().size() * middle;
    return SolutionDraft.titled(words, words.say("strata.step"))
        .step(
            "strata",
            words.number(share)
                + " × "
                + words.number(edge)
                + " + "
                + words.number(rest)
                + " × "
                + words.number(middle),
            words.number(mean))
        .slip(SamplingMistake.MEANS_AVERAGED, NumberAnswer.computed((edge + middle) / 2, 2))
        .slip(SamplingMistake.COUNTS_POOLED, NumberAnswer.computed(total / units, 2))
        .slip(
            SamplingMistake.WEIGHTS_EXCHANGED,
            NumberAnswer.computed(rest * edge + share * middle, 2))
        .answer(NumberAnswer.computed(mean, 2));
  }
}
