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
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.SprayVolume;
import agro.dose.WrittenAmount;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumePerVolume;
import agro.units.VolumeUnit;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.Set;

/**
 * A label of another country brought down to a knapsack: product and spray volume into the units of
 * the class, strength of the spray, product for a tank.
 *
 * @param rate product per area as the label states it
 * @param spray spray per area as the label states it
 * @param tank volume of the knapsack
 * @param context for whom
 */
record ForeignLabel(VolumePerArea rate, VolumePerArea spray, Volume tank, CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "units-foreign-label",
        CourseTopic.UNITS,
        EnumSet.of(Difficulty.DEMANDING),
        Set.of(
            UnitMistake.LAND_NOT_CONVERTED,
            UnitMistake.LAND_FACTOR_INVERTED,
            UnitMistake.AMOUNT_NOT_CONVERTED,
            UnitMistake.IMPERIAL_FOR_US,
            UnitMistake.RATIO_INVERTED,
            UnitMistake.STRENGTH_AS_TANK,
            UnitMistake.DIVIDED_INSTEAD_OF_MULTIPLIED),
        (draw, difficulty, context) -> draw(draw, context).body());
  }

  private static ForeignLabel draw(ExerciseDraw draw, CourseContext context) {
    var plain =
        new ForeignLabel(new VolumePerArea(1), new VolumePerArea(1), new Volume(1), context);
    var rate =
        draw.sensible(
            new VolumePerArea(0.3),
            new VolumePerArea(2.5),
            plain.foreign(plain.foreignMeasure()),
            2);
    var spray =
        draw.sensible(
            new VolumePerArea(150), new VolumePerArea(600), plain.foreign(plain.foreignWater()), 2);
    var tank =
        plain.american()
            ? Volume.of(draw.step(2, 5, 0.5), VolumeUnit.US_GALLON)
            : new Volume(draw.step(10, 20, 1));
    return new ForeignLabel(rate, spray, tank, context);
  }

  private boolean american() {
    return Factors.american(context.units());
  }

  private Unit<Area> foreignLand() {
    return american() ? AreaUnit.HECTARE : AreaUnit.ACRE;
  }

  private Unit<Volume> foreignMeasure() {
    return american() ? VolumeUnit.MILLILITRE : VolumeUnit.US_FLUID_OUNCE;
  }

  private Unit<Volume> foreignWater() {
    return american() ? VolumeUnit.LITRE : VolumeUnit.US_GALLON;
  }

  private Unit<VolumePerArea> foreign(Unit<Volume> above) {
    return VolumePerArea.unit(above, foreignLand());
  }

  private Unit<VolumePerArea> own(Unit<Volume> above) {
    return VolumePerArea.unit(above, context.units().land());
  }

  private Unit<VolumePerVolume> strength() {
    return VolumePerVolume.unit(context.units().measure(), context.units().water());
  }

  private CourseWords words() {
    return context.words().in(ForeignLabel.class, "units");
  }

  private ExerciseBody body() {
    var words = words();
    var units = context.units();
    return ExerciseBody.titled(words.say("label.title"))
        .story(
            words.say(
                "label.story",
                "rate",
                words.exact(rate, foreign(foreignMeasure())),
                "spray",
                words.exact(spray, foreign(foreignWater())),
                "tank",
                words.exact(tank, units.water())))
        .story(
            Factors.say(
                words,
                UnitSizes.in(words)
                    .and(foreignMeasure(), units.measure())
                    .and(foreignWater(), units.water())
                    .and(foreignLand(), units.land())))
        .givens(
            Givens.none()
                .withQuantity("rate", rate)
                .withQuantity("spray", spray)
                .withQuantity("tank", tank))
        .part(
            words.say("label.a", "unit", own(units.measure()).symbol()),
            earlier -> solveArea(rate, foreignMeasure(), units.measure()))
        .part(
            words.say("label.b", "unit", own(units.water()).symbol()),
            earlier -> solveArea(spray, foreignWater(), units.water()))
        .part(words.say("label.c", "unit", strength().symbol()), this::solveStrength)
        .part(words.say("label.d", "unit", units.measure().symbol()), this::solveTank)
        .cautions(Caution.all())
        .build();
  }

  private SolutionDraft part() {
    return SolutionDraft.titled(words(), words().say("label.title"));
  }

  private SolvedPart solveArea(VolumePerArea stated, Unit<Volume> from, Unit<Volume> to) {
    var words = words();
    var land = context.units().land();
    double area = foreignLand().toBase(1) / land.toBase(1);
    double volume = from.toBase(1) / to.toBase(1);
    double number = stated.in(foreign(from));
    var unit = own(to);
    double imperial = Factors.imperial(from) / Factors.imperial(to);
    return part()
        .step(
            "rate",
            words.exact(number)
                + " × "
                + Factors.size(words, from, to)
                + " ÷ "
                + Factors.size(words, foreignLand(), land),
            words.show(stated, unit))
        .slip(UnitMistake.LAND_NOT_CONVERTED, perArea(number * volume, unit))
        .slip(UnitMistake.LAND_FACTOR_INVERTED, perArea(number * volume * area, unit))
        .slip(UnitMistake.AMOUNT_NOT_CONVERTED, perArea(number / area, unit))
        .slip(UnitMistake.IMPERIAL_FOR_US, perArea(stated.in(unit) * imperial, unit))
        .answer(perArea(stated.in(unit), unit));
  }

  private static MeasuredAnswer<VolumePerArea> perArea(double number, Unit<VolumePerArea> unit) {
    return MeasuredAnswer.of(VolumePerArea.of(number, unit), unit);
  }

  private SolvedPart solveStrength(EarlierAnswers earlier) {
    var words = words();
    var units = context.units();
    var product = earlier.quantity(0, VolumePerArea.class);
    var water = earlier.quantity(1, VolumePerArea.class);
    var perLitre =
        new ProductPerArea(
                ProductAmount.liquid(product.in(own(units.measure())), units.measure()),
                WrittenAmount.one(units.land()))
            .inSpray(new SprayVolume(water))
            .perLitre();
    var right = new VolumePerVolume(perLitre.highNumber() * 1000);
    double inverted = water.in(own(units.water())) / product.in(own(units.measure()));
    return part()
        .step(
            "label.c",
            words.show(product, own(units.measure()))
                + " ÷ "
                + words.show(water, own(units.water())),
            words.show(right, strength()))
        .slip(
            UnitMistake.RATIO_INVERTED,
            MeasuredAnswer.of(VolumePerVolume.of(inverted, strength()), strength()))
        .answer(MeasuredAnswer.of(right, strength()));
  }

  private SolvedPart solveTank(EarlierAnswers earlier) {
    var words = words();
    var units = context.units();
    var mixed = earlier.quantity(2, VolumePerVolume.class);
    var right = mixed.times(tank);
    double divided = tank.in(units.water()) / mixed.in(strength());
    return part()
        .step(
            "label.d",
            words.show(mixed, strength()) + " × " + words.exact(tank, units.water()),
            words.show(right, units.measure()))
        .slip(
            UnitMistake.STRENGTH_AS_TANK,
            MeasuredAnswer.poured(mixed.times(Volume.of(1, units.water())), units.measure()))
        .slip(
            UnitMistake.DIVIDED_INSTEAD_OF_MULTIPLIED,
            MeasuredAnswer.poured(Volume.of(divided, units.measure()), units.measure()))
        .answer(MeasuredAnswer.poured(right, units.measure()));
  }
}
