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
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.dose.PumpsPerArea;
import agro.dose.SprayVolume;
import agro.units.Area;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.Set;

/**
 * Knapsack pumps: how many a unit of land takes, what goes into each, and the field.
 *
 * @param rate product per land
 * @param spray spray per land
 * @param pump volume of the knapsack
 * @param area size of the field
 * @param field name of the field
 * @param context for whom
 */
record KnapsackPumps(
    VolumePerArea rate,
    VolumePerArea spray,
    Volume pump,
    Area area,
    String field,
    CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "dose-pumps",
        CourseTopic.DOSE,
        EnumSet.of(Difficulty.ROUTINE),
        Set.of(
            DosingMistake.PUMPS_INVERTED,
            DosingMistake.HECTARE_FOR_ACRE,
            DosingMistake.ACRE_FOR_HECTARE,
            DosingMistake.PER_LITRE_TAKEN_PER_PUMP,
            DosingMistake.RATE_PER_TANK,
            DosingMistake.MULTIPLIED_BY_PUMPS,
            DosingMistake.LAST_FILLING_FORGOTTEN,
            DosingMistake.LAST_LOAD_AS_FULL,
            DosingMistake.RATE_TAKEN_AS_TOTAL),
        (draw, difficulty, context) -> draw(draw, context).body());
  }

  private static KnapsackPumps draw(ExerciseDraw draw, CourseContext context) {
    var units = new DoseUnits(context);
    var rate = draw.sensible(new VolumePerArea(0.25), new VolumePerArea(3), units.rate(), 2);
    var spray = draw.sensible(new VolumePerArea(180), new VolumePerArea(600), units.spray(), 2);
    var pump =
        units.american()
            ? Volume.of(draw.step(2, 5, 0.5), VolumeUnit.US_GALLON)
            : new Volume(draw.step(8, 20, 1));
    var onPump = pump.litres() / spray.litresPerHectare() * 10_000;
    var low = new Area(onPump * (draw.whole(2, 9) + 0.2 + 0.5 * draw.share()));
    var area = draw.sensible(low, low.times(1.05), units.land(), 2);
    return new KnapsackPumps(
        rate, spray, pump, area, draw.oneOf(context.setting().fields()), context);
  }

  private DoseUnits units() {
    return new DoseUnits(context);
  }

  private ExerciseBody body() {
    var units = units();
    var words = units.words();
    return ExerciseBody.titled(words.say("pumps.title"))
        .story(
            words.say(
                "pumps.story",
                "field",
                field,
                "area",
                words.exact(area, units.land()),
                "rate",
                words.exact(rate, units.rate()),
                "spray",
                words.exact(spray, units.spray()),
                "pump",
                words.exact(pump, units.water())))
        .givens(
            Givens.none()
                .withQuantity("rate", rate)
                .withQuantity("spray", spray)
                .withQuantity("pump", pump)
                .withQuantity("area", area))
        .part(words.say("pumps.a", "unit", units.land().symbol()), earlier -> pumpsPerLand())
        .part(words.say("pumps.b", "unit", units.measure().symbol()), this::dosePerPump)
        .part(words.say("pumps.c"), this::fillings)
        .part(words.say("pumps.d", "unit", units.measure().symbol()), this::product)
        .cautions(Caution.all())
        .build();
  }

  private NumberAnswer pumps(double number) {
    return NumberAnswer.rounded(number, 1, units().words().say("pumps"));
  }

  private SolvedPart pumpsPerLand() {
    var units = units();
    var words = units.words();
    double right = PumpsPerArea.from(new SprayVolume(spray), pump, units.land()).number();
    var part =
        units
            .part("pumps")
            .step(
                "pumps.a",
                words.exact(spray, units.spray()) + " ÷ " + words.exact(pump, units.water()),
                words.number(right))
            .slip(
                DosingMistake.PUMPS_INVERTED,
                NumberAnswer.computed(1 / right, 4, words.say("pumps")));
    return units.mixedUpLand(part, false, pumps(right / units.otherLand())).answer(pumps(right));
  }

  private PumpsPerArea counted(EarlierAnswers earlier) {
    return PumpsPerArea.of(earlier.number(0), units().land());
  }

  private SolvedPart dosePerPump(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var pumps = counted(earlier);
    var right = DoseUnits.volume(pumps.dosePerPump(units.product(rate)));
    double number = rate.in(units.rate());
    double perWater = number / spray.in(units.spray());
    return units
        .part("pumps")
        .step(
            "pumps.b",
            words.exact(rate, units.rate()) + " ÷ " + words.number(pumps.number()),
            words.show(right, units.measure()))
        .slip(
            DosingMistake.PER_LITRE_TAKEN_PER_PUMP,
            units.poured(Volume.of(perWater, units.measure())))
        .slip(DosingMistake.RATE_PER_TANK, units.poured(Volume.of(number, units.measure())))
        .slip(
            DosingMistake.MULTIPLIED_BY_PUMPS,
            units.poured(Volume.of(number * pumps.number(), units.measure())))
        .answer(units.poured(right));
  }

  private SolvedPart fillings(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    double pumps = counted(earlier).on(area);
    long right = (long) Math.ceil(pumps - 1e-9);
    return units
        .part("pumps")
        .step(
            "pumps.c",
            words.number(earlier.number(0)) + " × " + words.exact(area, units.land()),
            words.number(pumps) + " → " + words.exact((double) right))
        .slip(DosingMistake.LAST_FILLING_FORGOTTEN, NumberAnswer.whole(right - 1))
        .answer(NumberAnswer.whole(right, words.say(right == 1 ? "filling" : "fillings")));
  }

  private SolvedPart product(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var perPump = earlier.quantity(1, Volume.class);
    double pumps = counted(earlier).on(area);
    var right = perPump.times(pumps);
    return units
        .part("pumps")
        .step(
            "pumps.d",
            words.show(perPump, units.measure()) + " × " + words.number(pumps),
            words.show(right, units.measure()))
        .slip(DosingMistake.LAST_LOAD_AS_FULL, units.poured(perPump.times(earlier.number(2))))
        .slip(
            DosingMistake.RATE_TAKEN_AS_TOTAL,
            units.poured(Volume.of(rate.in(units.rate()), units.measure())))
        .answer(units.poured(right));
  }
}
