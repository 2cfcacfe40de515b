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
import agro.dose.ProductPerWetSubstrate;
import agro.dose.Substrate;
import agro.dose.WrittenAmount;
import agro.dose.scaling.ManureAgent;
import agro.dose.scaling.ManureEnrichment;
import agro.dose.scaling.ManureEnrichmentResult;
import agro.dose.scaling.MoistureRange;
import agro.dose.scaling.WetBasisMoisture;
import agro.source.Reference;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.Unit;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A living agent multiplied in manure before it is spread: product for the heap, dry matter, water
 * to add, product per land.
 *
 * @param perHundred product per hundred units of manure, in the unit of weighed products
 * @param heap mass of the heap
 * @param now per cent of water on the wet mass that it has
 * @param wanted per cent of water on the wet mass that is asked for
 * @param spread manure per land
 * @param context for whom
 */
record EnrichedManure(
    double perHundred,
    Mass heap,
    double now,
    double wanted,
    MassPerArea spread,
    CourseContext context) {

  private static final int HUNDRED = 100;
  private static final String AGENT = "A";

  static ExerciseType type() {
    return new DeclaredType(
        "dose-manure",
        CourseTopic.DOSE,
        EnumSet.of(Difficulty.DEMANDING),
        Set.of(
            DosingMistake.HUNDRED_FORGOTTEN,
            DosingMistake.DIVIDED_BY_LOT,
            DosingMistake.WATER_FOR_DRY_MATTER,
            DosingMistake.MOISTURES_SUBTRACTED,
            DosingMistake.WET_BASIS_AS_DRY,
            DosingMistake.WATER_THERE_FORGOTTEN,
            DosingMistake.HEAP_FOR_LAND,
            DosingMistake.PROPORTION_REVERSED),
        (draw, difficulty, context) -> draw(draw, context).body());
  }

  private static EnrichedManure draw(ExerciseDraw draw, CourseContext context) {
    var units = new DoseUnits(context);
    double perHundred = units.american() ? draw.step(4, 16, 1) : draw.step(200, 1_000, 50);
    var manure = context.units().yield();
    var heap = draw.sensible(new Mass(150), new Mass(2_500), manure, 2);
    double now = draw.step(20, 38, 1);
    double wanted = draw.step(45, 60, 1);
    var spread =
        draw.sensible(
            new MassPerArea(300),
            new MassPerArea(2_500),
            MassPerArea.unit(manure, units.land()),
            2);
    return new EnrichedManure(perHundred, heap, now, wanted, spread, context);
  }

  private DoseUnits units() {
    return new DoseUnits(context);
  }

  private Unit<Mass> manure() {
    return context.units().yield();
  }

  private Unit<Mass> powder() {
    return context.units().powder();
  }

  private Unit<MassPerArea> doseUnit() {
    return MassPerArea.unit(powder(), units().land());
  }

  private ExerciseBody body() {
    var units = units();
    var words = units.words();
    var spreadUnit = MassPerArea.unit(manure(), units.land());
    return ExerciseBody.titled(words.say("manure.title"))
        .story(
            words.say(
                "manure.story",
                "place",
                context.setting().place(),
                "heap",
                words.exact(heap, manure()),
                "rate",
                words.exact(perHundred) + " " + powder().symbol(),
                "hundred",
                words.exact(HUNDRED) + " " + manure().symbol()))
        .story(
            words.say(
                "manure.water",
                "now",
                words.exact(now),
                "wanted",
                words.exact(wanted),
                "spread",
                words.exact(spread, spreadUnit)))
        .givens(
            Givens.none()
                .withNumber("rate", perHundred)
                .withQuantity("heap", heap)
                .withNumber("now", now)
                .withNumber("wanted", wanted)
                .withQuantity("spread", spread))
        .part(words.say("manure.a", "unit", powder().symbol()), earlier -> product())
        .part(words.say("manure.b", "unit", manure().symbol()), earlier -> dryMatter())
        .part(words.say("manure.c", "unit", manure().symbol()), this::water)
        .part(words.say("manure.d", "unit", doseUnit().symbol()), this::perLand)
        .source(Reference.commonPractice("A living agent multiplied in manure"))
        .cautions(Caution.all())
        .build();
  }

  /** The adviser's enrichment of this heap, taken to have some share of water. */
  private ManureEnrichmentResult enriched(double percent) {
    var rate =
        new ProductPerWetSubstrate(
            ProductAmount.solid(perHundred, powder()),
            new WrittenAmount<>(HUNDRED, manure()),
            Substrate.MANURE);
    return ManureEnrichment.of(
            List.of(ManureAgent.of(AGENT, rate)),
            heap,
            WetBasisMoisture.percent(percent),
            MoistureRange.exactly(WetBasisMoisture.percent(wanted)))
        .evaluate();
  }

  private SolvedPart product() {
    var words = units().words();
    var right = DoseUnits.mass(enriched(now).totals().get(0));
    return units()
        .part("manure")
        .step(
            "manure.a",
            words.exact(perHundred)
                + " "
                + powder().symbol()
                + " × "
                + words.exact(heap, manure())
                + " ÷ "
                + words.exact(HUNDRED)
                + " "
                + manure().symbol(),
            words.show(right, powder()))
        .slip(DosingMistake.HUNDRED_FORGOTTEN, weighed(right.in(powder()) * HUNDRED, powder()))
        .slip(
            DosingMistake.DIVIDED_BY_LOT,
            weighed(HUNDRED * perHundred / heap.in(manure()), powder()))
        .answer(weighed(right.in(powder()), powder()));
  }

  private static MeasuredAnswer<Mass> weighed(double number, Unit<Mass> unit) {
    return MeasuredAnswer.of(Mass.of(number, unit), unit);
  }

  private SolvedPart dryMatter() {
    var words = units().words();
    var right = enriched(now).dryMatter();
    return units()
        .part("manure")
        .step(
            "manure.b",
            words.exact(heap, manure()) + " × (100 − " + words.exact(now) + ") ÷ 100",
            words.show(right, manure()))
        .slip(DosingMistake.WATER_FOR_DRY_MATTER, weighed(heap.minus(right).in(manure()), manure()))
        .slip(
            DosingMistake.WET_BASIS_AS_DRY,
            weighed(heap.in(manure()) / (1 + now / HUNDRED), manure()))
        .answer(weighed(right.in(manure()), manure()));
  }

  private SolvedPart water(EarlierAnswers earlier) {
    var words = units().words();
    var dry = earlier.quantity(1, Mass.class);
    var right = enriched(HUNDRED * (1 - dry.ratioTo(heap))).water().low();
    double wet = dry.in(manure()) / (1 - wanted / HUNDRED);
    double whole = heap.in(manure());
    return units()
        .part("manure")
        .step(
            "manure.wet",
            words.show(dry, manure()) + " ÷ ((100 − " + words.exact(wanted) + ") ÷ 100)",
            words.show(Mass.of(wet, manure()), manure()))
        .step(
            "manure.c",
            words.show(Mass.of(wet, manure()), manure()) + " − " + words.exact(heap, manure()),
            words.show(right, manure()))
        .slip(
            DosingMistake.MOISTURES_SUBTRACTED, weighed(whole * (wanted - now) / HUNDRED, manure()))
        .slip(DosingMistake.WATER_THERE_FORGOTTEN, weighed(wet - dry.in(manure()), manure()))
        .answer(weighed(right.in(manure()), manure()));
  }

  private SolvedPart perLand(EarlierAnswers earlier) {
    var words = units().words();
    var product = earlier.quantity(0, Mass.class);
    var land = new Area(AreaUnit.HECTARE.toBase(1));
    var onLand = spread.times(land);
    var right = product.times(onLand.ratioTo(heap)).dividedBy(land);
    var spreadUnit = MassPerArea.unit(manure(), units().land());
    double number = product.in(powder());
    double heaps = spread.in(spreadUnit) / heap.in(manure());
    return units()
        .part("manure")
        .step(
            "manure.d",
            words.show(product, powder())
                + " × "
                + words.exact(spread, spreadUnit)
                + " ÷ "
                + words.exact(heap, manure()),
            words.show(right, doseUnit()))
        .slip(DosingMistake.HEAP_FOR_LAND, dose(number))
        .slip(DosingMistake.PROPORTION_REVERSED, dose(number / heaps))
        .answer(dose(right.in(doseUnit())));
  }

  private MeasuredAnswer<MassPerArea> dose(double number) {
    return MeasuredAnswer.of(MassPerArea.of(number, doseUnit()), doseUnit());
  }
}
