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
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.course.UnitSizes;
import agro.units.MassPerVolume;
import agro.units.MassPerVolumeUnit;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerVolume;
import agro.units.VolumePerVolumeUnit;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.Set;

/**
 * A liquid in the spray in per cent or per mille: what a tank takes, and milligrams per litre.
 *
 * @param number number before the sign
 * @param permille whether it is per mille
 * @param tank volume of the tank
 * @param content content of the product, g/L
 * @param context for whom
 */
record SprayShare(
    double number, boolean permille, Volume tank, double content, CourseContext context) {

  private static final double THOUSAND = 1_000;

  static ExerciseType type() {
    return new DeclaredType(
        "units-concentration",
        CourseTopic.UNITS,
        EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE),
        Set.of(
            UnitMistake.PER_MILLE_FOR_PERCENT,
            UnitMistake.PERCENT_FOR_PER_MILLE,
            UnitMistake.PERCENT_AS_WHOLE_NUMBER,
            UnitMistake.DIVIDED_INSTEAD_OF_MULTIPLIED,
            UnitMistake.ACTIVE_FOR_PRODUCT,
            UnitMistake.RATE_DIVIDED_BY_CONTENT,
            UnitMistake.GRAMS_AS_MILLIGRAMS,
            UnitMistake.STRENGTH_AS_TANK),
        (draw, difficulty, context) -> {
          var drawn = draw(draw, context);
          return difficulty == Difficulty.BASIC ? drawn.basic() : drawn.routine();
        });
  }

  private static SprayShare draw(ExerciseDraw draw, CourseContext context) {
    boolean permille = draw.whole(0, 1) == 1;
    double number = permille ? draw.step(0.5, 8, 0.5) : draw.step(0.05, 0.8, 0.05);
    var tank = draw.sensible(new Volume(10), new Volume(800), context.units().water(), 2);
    double content = draw.step(50, 480, 10);
    return new SprayShare(number, permille, tank, content, context);
  }

  private CourseWords words() {
    return context.words().in(SprayShare.class, "units");
  }

  private String share() {
    return words().exact(number) + (permille ? " ‰" : " %");
  }

  private VolumePerVolume strength() {
    return permille
        ? VolumePerVolume.of(number, VolumePerVolumeUnit.MILLILITRE_PER_LITRE)
        : VolumePerVolume.of(number, VolumePerVolumeUnit.PERCENT);
  }

  private Givens givens() {
    return Givens.none()
        .withNumber("number", number)
        .withText("sign", permille ? "per mille" : "per cent")
        .withQuantity("tank", tank);
  }

  private ExerciseBody basic() {
    var words = words();
    var units = context.units();
    return ExerciseBody.titled(words.say("share.title"))
        .story(
            words.say(
                "share.story.wetter", "share", share(), "tank", words.exact(tank, units.water())))
        .story(Factors.say(words, UnitSizes.in(words).and(units.water(), units.measure())))
        .givens(givens())
        .part(
            words.say("share.question", "unit", units.measure().symbol()), earlier -> solveShare())
        .cautions(Caution.all())
        .build();
  }

  private SolvedPart solveShare() {
    var words = words();
    var units = context.units();
    var right = strength().times(tank);
    double perUnit = units.water().toBase(1) / units.measure().toBase(1);
    double divided = tank.in(units.water()) * perUnit / number / (permille ? THOUSAND : 100);
    var divisor = permille ? words.exact(THOUSAND) : words.exact(100);
    return SolutionDraft.titled(words, words.say("share.title"))
        .step(
            permille ? "share.permille" : "share.percent",
            words.exact(number) + " ÷ " + divisor + " × " + words.exact(tank, units.water()),
            words.show(right, units.measure()))
        .slip(
            permille ? UnitMistake.PERCENT_FOR_PER_MILLE : UnitMistake.PER_MILLE_FOR_PERCENT,
            poured(permille ? right.times(10) : right.times(0.1)))
        .slip(UnitMistake.PERCENT_AS_WHOLE_NUMBER, poured(right.times(permille ? THOUSAND : 100)))
        .slip(
            UnitMistake.DIVIDED_INSTEAD_OF_MULTIPLIED, poured(Volume.of(divided, units.measure())))
        .answer(poured(right));
  }

  private MeasuredAnswer<Volume> poured(Volume volume) {
    return MeasuredAnswer.poured(volume, context.units().measure());
  }

  private ExerciseBody routine() {
    var words = words();
    var units = context.units();
    return ExerciseBody.titled(words.say("share.title"))
        .story(
            words.say(
                "share.story.product",
                "share",
                share(),
                "content",
                words.exact(content) + " g/L",
                "tank",
                words.exact(tank, units.water())))
        .story(Factors.say(words, UnitSizes.in(words).and(units.water(), units.measure())))
        .givens(givens().withNumber("content", content))
        .part(words.say("share.a", "unit", millilitres().symbol()), earlier -> solveStrength())
        .part(words.say("share.b", "unit", milligrams().symbol()), this::solveActive)
        .part(words.say("share.c", "unit", units.measure().symbol()), this::solveTank)
        .cautions(Caution.all())
        .build();
  }

  private static Unit<VolumePerVolume> millilitres() {
    return VolumePerVolumeUnit.MILLILITRE_PER_LITRE;
  }

  private static Unit<MassPerVolume> milligrams() {
    return MassPerVolumeUnit.MILLIGRAM_PER_LITRE;
  }

  private SolutionDraft part() {
    return SolutionDraft.titled(words(), words().say("share.title"));
  }

  private SolvedPart solveStrength() {
    var right = strength();
    return part()
        .step(
            permille ? "share.a.permille" : "share.a.percent",
            words().exact(number) + " × " + (permille ? "1 mL/L" : "10 mL/L"),
            words().show(right, millilitres()))
        .slip(
            permille ? UnitMistake.PERCENT_FOR_PER_MILLE : UnitMistake.PER_MILLE_FOR_PERCENT,
            MeasuredAnswer.of(right.times(permille ? 10 : 0.1), millilitres()))
        .slip(
            UnitMistake.PERCENT_AS_WHOLE_NUMBER,
            MeasuredAnswer.of(right.times(permille ? THOUSAND : 100), millilitres()))
        .answer(MeasuredAnswer.of(right, millilitres()));
  }

  private SolvedPart solveActive(EarlierAnswers earlier) {
    var product = earlier.quantity(0, VolumePerVolume.class);
    // Milligrams of active ingredient in the millilitres of product of one litre of spray.
    var inOneLitre = new MassPerVolume(content).times(product.times(new Volume(1)));
    var right = new MassPerVolume(inOneLitre.kilograms() * THOUSAND);
    double millilitres = product.in(millilitres());
    return part()
        .step(
            "share.b",
            words().show(product, millilitres()) + " × " + words().exact(content) + " mg/mL",
            words().show(right, milligrams()))
        .slip(UnitMistake.ACTIVE_FOR_PRODUCT, active(millilitres * THOUSAND))
        .slip(UnitMistake.RATE_DIVIDED_BY_CONTENT, active(millilitres / content * THOUSAND))
        .slip(UnitMistake.GRAMS_AS_MILLIGRAMS, active(right.in(milligrams()) / THOUSAND))
        .answer(MeasuredAnswer.of(right, milligrams()));
  }

  private static MeasuredAnswer<MassPerVolume> active(double number) {
    return MeasuredAnswer.of(MassPerVolume.of(number, milligrams()), milligrams());
  }

  private SolvedPart solveTank(EarlierAnswers earlier) {
    var product = earlier.quantity(0, VolumePerVolume.class);
    var units = context.units();
    var right = product.times(tank);
    double millilitres = product.in(millilitres());
    return part()
        .step(
            "share.c",
            words().show(product, millilitres()) + " × " + words().exact(tank, units.water()),
            words().show(right, units.measure()))
        .slip(UnitMistake.STRENGTH_AS_TANK, poured(product.times(Volume.of(1, units.water()))))
        .slip(
            UnitMistake.DIVIDED_INSTEAD_OF_MULTIPLIED,
            poured(Volume.of(tank.in(units.water()) / millilitres, units.measure())))
        .answer(poured(right));
  }
}
