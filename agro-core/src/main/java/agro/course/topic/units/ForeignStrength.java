package agro.course.topic.units;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.course.UnitSizes;
import agro.source.Reference;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerVolume;
import agro.units.VolumeUnit;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A dose per volume of spray in foreign units, converted into those of the class.
 *
 * @param strength product per spray
 * @param above unit of the product
 * @param below unit of the spray
 * @param context for whom
 */
record ForeignStrength(
    VolumePerVolume strength, Unit<Volume> above, Unit<Volume> below, CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "units-strength",
        CourseTopic.UNITS,
        EnumSet.of(Difficulty.BASIC),
        Set.of(
            UnitMistake.WATER_NOT_CONVERTED,
            UnitMistake.WATER_FACTOR_INVERTED,
            UnitMistake.AMOUNT_NOT_CONVERTED,
            UnitMistake.IMPERIAL_FOR_US),
        (draw, difficulty, context) -> draw(draw, context).body());
  }

  private static ForeignStrength draw(ExerciseDraw draw, CourseContext context) {
    boolean american = Factors.american(context.units());
    Unit<Volume> above =
        american
            ? VolumeUnit.MILLILITRE
            : draw.<Unit<Volume>>oneOf(
                List.of(
                    VolumeUnit.US_FLUID_OUNCE, VolumeUnit.US_TABLESPOON, VolumeUnit.US_TEASPOON));
    var below = american ? VolumeUnit.LITRE : VolumeUnit.US_GALLON;
    var unit = VolumePerVolume.unit(above, below);
    var strength = draw.sensible(new VolumePerVolume(0.5), new VolumePerVolume(10), unit, 2);
    return new ForeignStrength(strength, above, below, context);
  }

  private CourseWords words() {
    return context.words().in(ForeignStrength.class, "units");
  }

  private Unit<Volume> measure() {
    return context.units().measure();
  }

  private Unit<Volume> water() {
    return context.units().water();
  }

  private Unit<VolumePerVolume> target() {
    return VolumePerVolume.unit(measure(), water());
  }

  private ExerciseBody body() {
    var words = words();
    return ExerciseBody.titled(words.say("strength.title"))
        .story(
            words.say(
                "strength.story",
                "strength",
                words.exact(strength, VolumePerVolume.unit(above, below))))
        .story(Factors.say(words, UnitSizes.in(words).and(above, measure()).and(below, water())))
        .givens(
            Givens.none()
                .withQuantity("strength", strength)
                .withText("unit", VolumePerVolume.unit(above, below).symbol()))
        .part(words.say("strength.question", "unit", target().symbol()), earlier -> solve())
        .source(Reference.commonPractice("Doses per volume of spray"))
        .cautions(Caution.all())
        .build();
  }

  private SolvedPart solve() {
    var words = words();
    double product = above.toBase(1) / measure().toBase(1);
    double spray = below.toBase(1) / water().toBase(1);
    double stated = strength.in(VolumePerVolume.unit(above, below));
    double imperial = Factors.imperial(water()) / Factors.imperial(below);
    return SolutionDraft.titled(words, words.say("strength.title"))
        .step(
            "strength",
            words.exact(stated)
                + " × "
                + Factors.size(words, above, measure())
                + " ÷ "
                + Factors.size(words, below, water()),
            words.show(strength, target()))
        .slip(UnitMistake.WATER_NOT_CONVERTED, answer(stated * product))
        .slip(UnitMistake.WATER_FACTOR_INVERTED, answer(stated * product * spray))
        .slip(UnitMistake.AMOUNT_NOT_CONVERTED, answer(stated / spray))
        .slip(UnitMistake.IMPERIAL_FOR_US, answer(strength.in(target()) * imperial))
        .answer(answer(strength.in(target())));
  }

  private MeasuredAnswer<VolumePerVolume> answer(double number) {
    return MeasuredAnswer.of(VolumePerVolume.of(number, target()), target());
  }
}
