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
import agro.source.SamplingBibliography;
import agro.stats.LinearFit;
import agro.units.Numbers;
import java.util.List;
import java.util.Set;

/** The power law of the variance from two fields, and the plants that a third one needs. */
final class PowerLawOfTwoFields {

  private static final List<Double> ERRORS = List.of(0.1, 0.15, 0.2, 0.25, 0.3);

  private PowerLawOfTwoFields() {}

  /** Means and variances of two fields, the mean of a third one and the wanted precision. */
  private record Fields(
      double thinMean,
      double thinVariance,
      double denseMean,
      double denseVariance,
      double mean,
      double error) {

    /** Plants for the third field before rounding, for the choice of numbers alone. */
    double plants() {
      double b =
          StrictMath.log(denseVariance / thinVariance) / StrictMath.log(denseMean / thinMean);
      double variance = thinVariance * StrictMath.pow(mean / thinMean, b);
      return variance / (error * error * mean * mean);
    }
  }

  static ExerciseType type() {
    return new DeclaredType(
        "sampling-power-law",
        CourseTopic.SAMPLING,
        Set.of(Difficulty.DEMANDING),
        Set.of(
            SamplingMistake.LOGARITHMS_LEFT_OUT,
            SamplingMistake.UPSIDE_DOWN,
            SamplingMistake.DEVIATIONS_FOR_VARIANCES,
            SamplingMistake.EXPONENT_AS_FACTOR,
            SamplingMistake.EXPONENT_LEFT_OUT,
            SamplingMistake.FACTOR_RAISED_TOO,
            SamplingMistake.FACTOR_LEFT_OUT,
            SamplingMistake.ROUNDED_DOWN,
            SamplingMistake.PRECISION_NOT_SQUARED,
            SamplingMistake.MEAN_NOT_SQUARED),
        PowerLawOfTwoFields::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var fields = fields(draw);
    var pest = draw.oneOf(context.setting().pests());
    var names = draw.some(context.setting().fields(), 3);
    var words = context.words().in(SamplingExercises.class, "sampling");
    return ExerciseBody.titled(words.say("law.title"))
        .story(words.say("law.story", "pest", pest))
        .story(line(words, names.get(0), fields.thinMean(), fields.thinVariance()))
        .story(line(words, names.get(1), fields.denseMean(), fields.denseVariance()))
        .story(
            words.say(
                "law.story.third",
                "field",
                names.get(2),
                "mean",
                words.exact(fields.mean()),
                "error",
                words.exact(100 * fields.error())))
        .givens(
            Givens.none()
                .withNumbers("means", List.of(fields.thinMean(), fields.denseMean()))
                .withNumbers("variances", List.of(fields.thinVariance(), fields.denseVariance()))
                .withNumber("mean", fields.mean())
                .withNumber("error", fields.error()))
        .source(SamplingBibliography.TAYLOR_1961)
        .source(SamplingBibliography.KARANDINOS_1976)
        .part(words.say("law.question.b"), earlier -> exponent(fields, words))
        .part(words.say("law.question.a"), earlier -> factor(fields, earlier.number(0), words))
        .part(
            words.say("power.question.variance"),
            earlier ->
                PlantsForPrecision.variance(
                    fields.mean(), earlier.number(1), earlier.number(0), words))
        .part(
            words.say("size.question.power"),
            earlier ->
                PlantsForPrecision.known(fields.mean(), fields.error(), earlier.number(2), words))
        .build();
  }

  private static Fields fields(ExerciseDraw draw) {
    while (true) {
      double power = draw.step(1.15, 1.75, 0.01);
      double factor = draw.sensible(1.3, 3.5, 2);
      double thin = draw.sensible(0.4, 1.5, 2);
      double dense = draw.sensible(5 * thin, 12 * thin, 2);
      var fields =
          new Fields(
              thin,
              threeDigits(factor * StrictMath.pow(thin, power)),
              dense,
              threeDigits(factor * StrictMath.pow(dense, power)),
              draw.sensible(1.6 * thin, 3 * thin, 2),
              draw.oneOf(ERRORS));
      if (PlantsForPrecision.isClear(fields.plants())) {
        return fields;
      }
    }
  }

  private static double threeDigits(double value) {
    return Double.parseDouble(Numbers.significant(value, 3));
  }

  private static String line(CourseWords words, String field, double mean, double variance) {
    return words.say(
        "law.story.field",
        "field",
        field,
        "mean",
        words.exact(mean),
        "variance",
        words.exact(variance));
  }

  private static SolvedPart exponent(Fields fields, CourseWords words) {
    double variances = fields.denseVariance() / fields.thinVariance();
    double means = fields.denseMean() / fields.thinMean();
    // The line of the adviser's fit, through the only two points.
    double b =
        LinearFit.of(
                new double[] {Math.log(fields.thinMean()), Math.log(fields.denseMean())},
                new double[] {Math.log(fields.thinVariance()), Math.log(fields.denseVariance())})
            .slope();
    return SolutionDraft.titled(words, words.say("law.b.step"))
        .step(
            "law.b",
            "ln("
                + words.exact(fields.denseVariance())
                + " / "
                + words.exact(fields.thinVariance())
                + ") / ln("
                + words.exact(fields.denseMean())
                + " / "
                + words.exact(fields.thinMean())
                + ")",
            words.number(b))
        .slip(SamplingMistake.LOGARITHMS_LEFT_OUT, NumberAnswer.computed(variances / means, 3))
        .slip(SamplingMistake.UPSIDE_DOWN, NumberAnswer.computed(1 / b, 3))
        .slip(SamplingMistake.DEVIATIONS_FOR_VARIANCES, NumberAnswer.computed(b / 2, 3))
        .answer(NumberAnswer.computed(b, 3));
  }

  private static SolvedPart factor(Fields fields, double b, CourseWords words) {
    double variance = fields.thinVariance();
    double mean = fields.thinMean();
    double raised = Math.pow(mean, b);
    return SolutionDraft.titled(words, words.say("law.a.step"))
        .step(
            "law.a",
            words.exact(variance) + " / " + words.exact(mean) + "^" + words.number(b),
            words.number(variance / raised))
        .slip(SamplingMistake.EXPONENT_AS_FACTOR, NumberAnswer.computed(variance / (mean * b), 3))
        .slip(SamplingMistake.EXPONENT_LEFT_OUT, NumberAnswer.computed(variance / mean, 3))
        .slip(SamplingMistake.UPSIDE_DOWN, NumberAnswer.computed(raised / variance, 3))
        .answer(NumberAnswer.computed(variance / raised, 3));
  }
}
