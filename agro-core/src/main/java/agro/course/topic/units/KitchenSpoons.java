package agro.course.topic.units;

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
import agro.course.MeasuredAnswer;
import agro.course.PercentAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.course.UnitSizes;
import agro.source.Reference;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumeUnit;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A dose measured out with kitchen spoons, whose sizes differ from country to country.
 *
 * @param spoons number of spoons
 * @param spoon size of the spoon
 * @param wanted dose that is asked for
 * @param compared whether the dose is compared with the one asked for
 * @param context for whom
 */
record KitchenSpoons(
    double spoons, Unit<Volume> spoon, Volume wanted, boolean compared, CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "units-spoons",
        CourseTopic.UNITS,
        EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE),
        Set.of(
            UnitMistake.TEASPOON_FOR_TABLESPOON,
            UnitMistake.OTHER_TABLESPOON,
            UnitMistake.DIVIDED_INSTEAD_OF_MULTIPLIED,
            UnitMistake.RATIO_INVERTED,
            UnitMistake.DEPARTURE_FOR_SHARE),
        (draw, difficulty, context) ->
            draw(draw, difficulty == Difficulty.ROUTINE, context).body());
  }

  private static KitchenSpoons draw(ExerciseDraw draw, boolean compared, CourseContext context) {
    double spoons = draw.step(1.5, 9, 0.5);
    Unit<Volume> spoon =
        draw.<Unit<Volume>>oneOf(
            List.of(
                VolumeUnit.METRIC_TABLESPOON,
                VolumeUnit.US_TABLESPOON,
                VolumeUnit.AUSTRALIAN_TABLESPOON));
    double share = draw.step(0.6, 1.6, 0.05);
    var wanted =
        draw.sensible(
            Volume.of(spoons * share * 0.97, spoon),
            Volume.of(spoons * share * 1.03, spoon),
            VolumeUnit.MILLILITRE,
            2);
    return new KitchenSpoons(spoons, spoon, wanted, compared, context);
  }

  private CourseWords words() {
    return context.words().in(KitchenSpoons.class, "units");
  }

  private ExerciseBody body() {
    var words = words();
    var body =
        ExerciseBody.titled(words.say("spoons.title"))
            .story(
                words.say(
                    "spoons.story", "spoons", words.exact(spoons) + " " + words.symbol(spoon)))
            .story(
                Factors.say(
                    words,
                    UnitSizes.in(words)
                        .and(spoon, VolumeUnit.MILLILITRE)
                        .and(otherSpoon(), VolumeUnit.MILLILITRE)))
            .givens(
                Givens.none()
                    .withNumber("spoons", spoons)
                    .withText("spoon", spoon.symbol())
                    .withQuantity("wanted", wanted))
            .part(words.say("spoons.a", "unit", "mL"), earlier -> solveVolume());
    if (compared) {
      body.story(words.say("spoons.wanted", "wanted", words.exact(wanted, VolumeUnit.MILLILITRE)))
          .part(words.say("spoons.b"), this::solveShare);
    }
    return body.source(Reference.commonPractice("Doses measured with spoons"))
        .cautions(Caution.all())
        .build();
  }

  private Unit<Volume> otherSpoon() {
    return spoon == VolumeUnit.AUSTRALIAN_TABLESPOON
        ? VolumeUnit.METRIC_TABLESPOON
        : VolumeUnit.AUSTRALIAN_TABLESPOON;
  }

  private SolvedPart solveVolume() {
    var words = words();
    var right = Volume.of(spoons, spoon);
    var teaspoon =
        spoon == VolumeUnit.US_TABLESPOON ? VolumeUnit.US_TEASPOON : VolumeUnit.METRIC_TEASPOON;
    double one = Volume.of(1, spoon).in(VolumeUnit.MILLILITRE);
    return SolutionDraft.titled(words, words.say("spoons.title"))
        .step(
            "spoons.a",
            words.exact(spoons) + " × " + words.show(Volume.of(1, spoon), VolumeUnit.MILLILITRE),
            words.show(right, VolumeUnit.MILLILITRE))
        .slip(UnitMistake.TEASPOON_FOR_TABLESPOON, volume(Volume.of(spoons, teaspoon)))
        .slip(UnitMistake.OTHER_TABLESPOON, volume(Volume.of(spoons, otherSpoon())))
        .slip(
            UnitMistake.DIVIDED_INSTEAD_OF_MULTIPLIED,
            volume(Volume.of(one / spoons, VolumeUnit.MILLILITRE)))
        .answer(volume(right));
  }

  private static MeasuredAnswer<Volume> volume(Volume volume) {
    return MeasuredAnswer.of(volume, VolumeUnit.MILLILITRE);
  }

  private SolvedPart solveShare(EarlierAnswers earlier) {
    var words = words();
    var given = earlier.quantity(0, Volume.class);
    double right = 100 * given.ratioTo(wanted);
    return SolutionDraft.titled(words, words.say("spoons.title"))
        .step(
            "spoons.b",
            words.show(given, VolumeUnit.MILLILITRE)
                + " ÷ "
                + words.exact(wanted, VolumeUnit.MILLILITRE),
            words.number(right) + " %")
        .slip(UnitMistake.RATIO_INVERTED, PercentAnswer.rounded(100 * wanted.ratioTo(given), 1))
        .slip(UnitMistake.DEPARTURE_FOR_SHARE, PercentAnswer.rounded(right - 100, 1))
        .answer(PercentAnswer.rounded(right, 1));
  }
}
