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
import agro.sampling.VarianceModel;
import agro.sampling.size.Precision;
import agro.sampling.size.SampleSize;
import agro.source.SamplingBibliography;
import java.util.List;
import java.util.Set;

/** How many plants to look at for a wanted precision of the mean. */
final class PlantsForPrecision {

  private static final List<Double> ERRORS = List.of(0.1, 0.15, 0.2, 0.25, 0.3);
  private static final double MINUTES_PER_HOUR = 60;

  /** Nobody samples fewer plants than this in a field. */
  private static final double FEWEST = 6;

  /** Minutes of a long day in the field. */
  private static final double LONGEST = 480;

  private PlantsForPrecision() {}

  /** Expected mean, wanted error over mean, minutes for a plant, and how counts vary. */
  private record Wanted(
      double mean, double error, double minutes, double k, double factor, double power) {

    boolean isClear() {
      double square = error * error;
      double variance = factor * StrictMath.pow(mean, power);
      double random = 1 / (square * mean);
      double clumped = (1 / mean + 1 / k) / square;
      double known = variance / (square * mean * mean);
      return random > FEWEST
          && Math.max(clumped, known) * minutes < LONGEST
          && PlantsForPrecision.isClear(random)
          && PlantsForPrecision.isClear(clumped)
          && PlantsForPrecision.isClear(known);
    }
  }

  static ExerciseType type() {
    return new DeclaredType(
        "sampling-size",
        CourseTopic.SAMPLING,
        Set.of(Difficulty.BASIC, Difficulty.ROUTINE, Difficulty.DEMANDING),
        Set.of(
            SamplingMistake.ROUNDED_DOWN,
            SamplingMistake.PRECISION_NOT_SQUARED,
            SamplingMistake.MEAN_MULTIPLIED,
            SamplingMistake.CLUMPING_IGNORED,
            SamplingMistake.EXPONENT_NOT_INVERTED,
            SamplingMistake.EXPONENT_AS_FACTOR,
            SamplingMistake.FACTOR_RAISED_TOO,
            SamplingMistake.FACTOR_LEFT_OUT,
            SamplingMistake.MEAN_NOT_SQUARED,
            SamplingMistake.MINUTES_NOT_CONVERTED,
            SamplingMistake.HOUR_OF_HUNDRED_MINUTES),
        PlantsForPrecision::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var wanted = wanted(draw);
    double k = wanted.k();
    var pest = draw.oneOf(context.setting().pests());
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(SamplingExercises.class, "sampling");
    var body =
        ExerciseBody.titled(words.say("size.title"))
            .story(
                words.say(
                    "size.story",
                    "pest",
                    pest,
                    "field",
                    field,
                    "mean",
                    words.exact(wanted.mean()),
                    "error",
                    words.exact(100 * wanted.error())))
            .source(SamplingBibliography.KARANDINOS_1976);
    var givens =
        Givens.none().withNumber("mean", wanted.mean()).withNumber("error", wanted.error());
    return switch (difficulty) {
      case BASIC ->
          body.givens(givens)
              .part(words.say("size.question.random"), earlier -> atRandom(wanted, words))
              .build();
      case ROUTINE ->
          body.story(
                  words.say(
                      "size.story.k",
                      "k",
                      words.exact(k),
                      "minutes",
                      words.exact(wanted.minutes())))
              .givens(givens.withNumber("k", k).withNumber("minutes", wanted.minutes()))
              .part(words.say("size.question.random"), earlier -> atRandom(wanted, words))
              .part(
                  words.say("size.question.clumped", "k", words.exact(k)),
                  earlier -> clumped(wanted, k, words))
              .part(words.say("size.question.hours"), earlier -> hours(wanted, earlier, words))
              .build();
      case DEMANDING -> byPowerLaw(body, givens, wanted, words);
    };
  }

  private static ExerciseBody byPowerLaw(
      ExerciseBody.Builder body, Givens givens, Wanted wanted, CourseWords words) {
    double factor = wanted.factor();
    double power = wanted.power();
    return body.story(
            words.say(
                "size.story.power",
                "a",
                words.exact(factor),
                "b",
                words.exact(power),
                "minutes",
                words.exact(wanted.minutes())))
        .givens(
            givens
                .withNumber("a", factor)
                .withNumber("b", power)
                .withNumber("minutes", wanted.minutes()))
        .source(SamplingBibliography.TAYLOR_1961)
        .part(
            words.say("power.question.variance"),
            earlier -> variance(wanted.mean(), factor, power, words))
        .part(
            words.say("size.question.power"),
            earlier -> known(wanted.mean(), wanted.error(), earlier.number(0), words))
        .part(words.say("size.question.hours"), earlier -> hours(wanted, earlier, words))
        .build();
  }

  private static Wanted wanted(ExerciseDraw draw) {
    while (true) {
      var wanted =
          new Wanted(
              draw.sensible(0.6, 6, 2),
              draw.oneOf(ERRORS),
              draw.oneOf(List.of(1.5, 2.0, 2.5, 3.0)),
              draw.sensible(0.4, 2.5, 2),
              draw.sensible(1.3, 4, 2),
              draw.step(1.15, 1.7, 0.05));
      if (wanted.isClear()) {
        return wanted;
      }
    }
  }

  /** A number so far from a whole one that rounded steps lead to the same number of plants. */
  static boolean isClear(double exact) {
    double part = exact - Math.floor(exact);
    return part > 0.12 && part < 0.88;
  }

  private static int units(VarianceModel model, double mean, double error) {
    return SampleSize.of(model, mean, new Precision.RelativeStandardError(error)).units();
  }

  private static NumberAnswer plants(double exact, CourseWords words) {
    return NumberAnswer.whole((long) Math.ceil(exact - 1e-9), words.say("plants"));
  }

  private static NumberAnswer fewer(int plants, double exact, CourseWords words) {
    return NumberAnswer.whole(
        exact < plants ? plants - 1 : (long) Math.floor(exact), words.say("plants"));
  }

  private static SolvedPart atRandom(Wanted wanted, CourseWords words) {
    double mean = wanted.mean();
    double error = wanted.error();
    int n = units(new VarianceModel.Random(), mean, error);
    double exact = 1 / (error * error * mean);
    return SolutionDraft.titled(words, words.say("size.random.step"))
        .step(
            "size.random",
            "1 / (" + words.exact(error) + "² × " + words.exact(mean) + ")",
            words.number(exact))
        .step("round.up", "", n + " " + words.say("plants"))
        .slip(SamplingMistake.ROUNDED_DOWN, fewer(n, exact, words))
        .slip(SamplingMistake.PRECISION_NOT_SQUARED, plants(1 / (error * mean), words))
        .slip(SamplingMistake.MEAN_MULTIPLIED, plants(mean / (error * error), words))
        .answer(NumberAnswer.whole(n, words.say("plants")));
  }

  private static SolvedPart clumped(Wanted wanted, double k, CourseWords words) {
    double mean = wanted.mean();
    double error = wanted.error();
    double square = error * error;
    int n = units(new VarianceModel.NegativeBinomial(k), mean, error);
    double exact = (1 / mean + 1 / k) / square;
    return SolutionDraft.titled(words, words.say("size.clumped.step"))
        .step(
            "size.clumped",
            "(1 / "
                + words.exact(mean)
                + " + 1 / "
                + words.exact(k)
                + ") / "
                + words.exact(error)
                + "²",
            words.number(exact))
        .step("round.up", "", n + " " + words.say("plants"))
        .slip(SamplingMistake.ROUNDED_DOWN, fewer(n, exact, words))
        .slip(SamplingMistake.CLUMPING_IGNORED, plants(1 / (square * mean), words))
        .slip(SamplingMistake.PRECISION_NOT_SQUARED, plants(exact * error, words))
        .slip(SamplingMistake.EXPONENT_NOT_INVERTED, plants((1 / mean + k) / square, words))
        .answer(NumberAnswer.whole(n, words.say("plants")));
  }

  /** The variance that the power law gives at a mean. */
  static SolvedPart variance(double mean, double factor, double power, CourseWords words) {
    double variance = new VarianceModel.Power(factor, power).variance(mean);
    return SolutionDraft.titled(words, words.say("power.variance.step"))
        .step(
            "power.variance",
            words.number(factor) + " × " + words.exact(mean) + "^" + words.number(power),
            words.number(variance))
        .slip(SamplingMistake.EXPONENT_AS_FACTOR, NumberAnswer.computed(factor * mean * power, 3))
        .slip(
            SamplingMistake.FACTOR_RAISED_TOO,
            NumberAnswer.computed(Math.pow(factor * mean, power), 3))
        .slip(SamplingMistake.FACTOR_LEFT_OUT, NumberAnswer.computed(Math.pow(mean, power), 3))
        .answer(NumberAnswer.computed(variance, 3));
  }

  /** Plants for a variance that is known; a rounded variance may move the number by one or so. */
  static SolvedPart known(double mean, double error, double variance, CourseWords words) {
    int n = units(new VarianceModel.Known(variance), mean, error);
    double exact = variance / Math.pow(error * mean, 2);
    return SolutionDraft.titled(words, words.say("size.known.step"))
        .step(
            "size.known",
            words.number(variance) + " / (" + words.exact(error) + " × " + words.exact(mean) + ")²",
            words.number(exact))
        .step("round.up", "", n + " " + words.say("plants"))
        .slip(SamplingMistake.ROUNDED_DOWN, fewer(n, exact, words))
        .slip(
            SamplingMistake.PRECISION_NOT_SQUARED, plants(variance / (error * mean * mean), words))
        .slip(SamplingMistake.MEAN_NOT_SQUARED, plants(variance / (error * error * mean), words))
        .answer(NumberAnswer.whole(n, words.say("plants")));
  }

  private static SolvedPart hours(Wanted wanted, EarlierAnswers earlier, CourseWords words) {
    double plants = earlier.number(1);
    double minutes = plants * wanted.minutes();
    double hours = minutes / MINUTES_PER_HOUR;
    var unit = words.say("hours");
    return SolutionDraft.titled(words, words.say("size.hours.step"))
        .step(
            "size.hours",
            words.exact(plants) + " × " + words.exact(wanted.minutes()) + " / 60",
            words.number(hours) + " " + unit)
        .slip(SamplingMistake.MINUTES_NOT_CONVERTED, NumberAnswer.computed(minutes, 2, unit))
        .slip(
            SamplingMistake.HOUR_OF_HUNDRED_MINUTES, NumberAnswer.computed(minutes / 100, 2, unit))
        .answer(NumberAnswer.computed(hours, 2, unit));
  }
}
