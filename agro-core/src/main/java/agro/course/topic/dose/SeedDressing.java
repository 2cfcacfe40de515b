package agro.course.topic.dose;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.SolvedPart;
import agro.dose.ProductAmount;
import agro.dose.ProductPerSeedMass;
import agro.dose.WrittenAmount;
import agro.dose.scaling.SeedTreatment;
import agro.units.Area;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.MassPerMass;
import agro.units.MassPerMassUnit;
import agro.units.MassUnit;
import agro.units.Unit;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.Set;

/**
 * Seed dressing: product for a lot of seed, and what the land gets with the seed.
 *
 * @param rate product per hundred units of seed
 * @param lot seed that is treated (basic)
 * @param sowing seed per land
 * @param area size of the field
 * @param field name of the field
 * @param context for whom
 */
record SeedDressing(
    MassPerMass rate,
    Mass lot,
    MassPerArea sowing,
    Area area,
    String field,
    CourseContext context) {

  private static final int HUNDRED = 100;

  static ExerciseType type() {
    return new DeclaredType(
        "dose-seed",
        CourseTopic.DOSE,
        EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE),
        Set.of(
            DosingMistake.HUNDRED_FORGOTTEN,
            DosingMistake.DIVIDED_BY_LOT,
            DosingMistake.RATE_DIVIDED_BY_AREA,
            DosingMistake.RATE_TAKEN_AS_TOTAL,
            DosingMistake.LOT_FOR_LAND),
        (draw, difficulty, context) ->
            difficulty == Difficulty.BASIC
                ? draw(draw, context).basic()
                : draw(draw, context).routine());
  }

  private static SeedDressing draw(ExerciseDraw draw, CourseContext context) {
    var units = new DoseUnits(context);
    var seed = context.units().yield();
    var rate =
        draw.sensible(
            new MassPerMass(1), new MassPerMass(8), new SeedDressing(context).rateUnit(), 2);
    var lot = draw.sensible(new Mass(15), new Mass(900), seed, 2);
    var sowing =
        draw.sensible(
            new MassPerArea(8), new MassPerArea(200), MassPerArea.unit(seed, units.land()), 2);
    var area = draw.sensible(new Area(3_000), new Area(60_000), units.land(), 2);
    return new SeedDressing(
        rate, lot, sowing, area, draw.oneOf(context.setting().fields()), context);
  }

  private SeedDressing(CourseContext context) {
    this(new MassPerMass(1), new Mass(1), new MassPerArea(1), new Area(1), "", context);
  }

  private DoseUnits units() {
    return new DoseUnits(context);
  }

  private Unit<Mass> seed() {
    return context.units().yield();
  }

  private Unit<MassPerMass> rateUnit() {
    return seed() == MassUnit.POUND
        ? MassPerMassUnit.OUNCE_PER_SHORT_HUNDREDWEIGHT
        : MassPerMassUnit.GRAM_PER_100_KILOGRAMS;
  }

  private Unit<MassPerArea> sowingUnit() {
    return MassPerArea.unit(seed(), units().land());
  }

  private Unit<MassPerArea> doseUnit() {
    return MassPerArea.unit(context.units().powder(), units().land());
  }

  private ExerciseBody basic() {
    var words = units().words();
    return ExerciseBody.titled(words.say("seed.title"))
        .story(
            words.say(
                "seed.story.lot",
                "rate",
                words.exact(rate, rateUnit()),
                "lot",
                words.exact(lot, seed())))
        .story(hundred())
        .givens(Givens.none().withQuantity("rate", rate).withQuantity("lot", lot))
        .part(
            words.say("seed.question", "unit", context.units().powder().symbol()),
            earlier -> product(lot))
        .cautions(Caution.all())
        .build();
  }

  private String hundred() {
    return units()
        .words()
        .say(
            seed() == MassUnit.POUND ? "seed.hundredweight" : "seed.hundred",
            "seed",
            seed().symbol());
  }

  private SeedTreatment treatment(Mass seedLot) {
    var powder = context.units().powder();
    return SeedTreatment.of(
        new ProductPerSeedMass(
            ProductAmount.solid(rate.in(rateUnit()), powder), new WrittenAmount<>(HUNDRED, seed())),
        seedLot);
  }

  private SolvedPart product(Mass seedLot) {
    var words = units().words();
    var powder = context.units().powder();
    var right = DoseUnits.mass(treatment(seedLot).evaluate().product());
    double stated = rate.in(rateUnit());
    return units()
        .part("seed")
        .step(
            "seed.product",
            words.exact(stated)
                + " "
                + powder.symbol()
                + " × "
                + words.show(seedLot, seed())
                + " ÷ 100 "
                + seed().symbol(),
            words.show(right, powder))
        .slip(DosingMistake.HUNDRED_FORGOTTEN, weighed(right.in(powder) * HUNDRED))
        .slip(DosingMistake.DIVIDED_BY_LOT, weighed(HUNDRED * stated / seedLot.in(seed())))
        .answer(weighed(right.in(powder)));
  }

  private MeasuredAnswer<Mass> weighed(double number) {
    var powder = context.units().powder();
    return MeasuredAnswer.weighed(Mass.of(number, powder), powder);
  }

  private ExerciseBody routine() {
    var units = units();
    var words = units.words();
    return ExerciseBody.titled(words.say("seed.title"))
        .story(
            words.say(
                "seed.story.field",
                "field",
                field,
                "area",
                words.exact(area, units.land()),
                "sowing",
                words.exact(sowing, sowingUnit()),
                "rate",
                words.exact(rate, rateUnit())))
        .story(hundred())
        .givens(
            Givens.none()
                .withQuantity("rate", rate)
                .withQuantity("sowing", sowing)
                .withQuantity("area", area))
        .part(words.say("seed.a", "unit", seed().symbol()), earlier -> seedForField())
        .part(
            words.say("seed.b", "unit", context.units().powder().symbol()),
            earlier -> product(earlier.quantity(0, Mass.class)))
        .part(words.say("seed.c", "unit", doseUnit().symbol()), this::perLand)
        .cautions(Caution.all())
        .build();
  }

  private SolvedPart seedForField() {
    var words = units().words();
    var right = sowing.times(area);
    double stated = sowing.in(sowingUnit());
    return units()
        .part("seed")
        .step(
            "seed.a",
            words.exact(sowing, sowingUnit()) + " × " + words.exact(area, units().land()),
            words.show(right, seed()))
        .slip(DosingMistake.RATE_DIVIDED_BY_AREA, seed(stated / area.in(units().land())))
        .slip(DosingMistake.RATE_TAKEN_AS_TOTAL, seed(stated))
        .answer(seed(right.in(seed())));
  }

  private MeasuredAnswer<Mass> seed(double number) {
    return MeasuredAnswer.of(Mass.of(number, seed()), seed());
  }

  private SolvedPart perLand(EarlierAnswers earlier) {
    var words = units().words();
    var product = earlier.quantity(1, Mass.class);
    var right = product.dividedBy(area);
    return units()
        .part("seed")
        .step(
            "seed.c",
            words.show(product, context.units().powder())
                + " ÷ "
                + words.exact(area, units().land()),
            words.show(right, doseUnit()))
        .slip(DosingMistake.LOT_FOR_LAND, dose(product.in(context.units().powder())))
        .slip(DosingMistake.HUNDRED_FORGOTTEN, dose(rate.in(rateUnit()) * sowing.in(sowingUnit())))
        .answer(dose(right.in(doseUnit())));
  }

  private MeasuredAnswer<MassPerArea> dose(double number) {
    return MeasuredAnswer.of(MassPerArea.of(number, doseUnit()), doseUnit());
  }
}
