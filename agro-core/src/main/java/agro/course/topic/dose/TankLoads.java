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
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.dose.ProductPerArea;
import agro.dose.SprayVolume;
import agro.dose.tank.SprayTank;
import agro.dose.tank.SprayedField;
import agro.dose.tank.TankLoad;
import agro.dose.tank.TankMix;
import agro.dose.tank.TankMixPlan;
import agro.dose.tank.TankPartner;
import agro.units.Area;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.Set;

/**
 * A field that takes several tanks: land per tank, product per full tank and for the last load.
 *
 * @param rate product per land
 * @param spray spray per land
 * @param tank volume of the tank
 * @param area size of the field
 * @param field name of the field
 * @param context for whom
 */
record TankLoads(
    VolumePerArea rate,
    VolumePerArea spray,
    Volume tank,
    Area area,
    String field,
    CourseContext context) {

  private static final String PRODUCT = "A";

  static ExerciseType type() {
    return new DeclaredType(
        "dose-tank",
        CourseTopic.DOSE,
        EnumSet.of(Difficulty.ROUTINE, Difficulty.DEMANDING),
        Set.of(
            DosingMistake.TANK_DIVISION_INVERTED,
            DosingMistake.HECTARE_FOR_ACRE,
            DosingMistake.ACRE_FOR_HECTARE,
            DosingMistake.TANK_FILLED_FOR_FIELD,
            DosingMistake.RATE_PER_TANK,
            DosingMistake.RATE_DIVIDED_BY_AREA,
            DosingMistake.LAST_LOAD_AS_FULL,
            DosingMistake.LAST_LOAD_AS_WHAT_IS_MISSING,
            DosingMistake.PART_LOAD_COUNTED_AS_FULL,
            DosingMistake.RATE_TAKEN_AS_TOTAL),
        (draw, difficulty, context) ->
            difficulty == Difficulty.ROUTINE
                ? draw(draw, context).routine()
                : draw(draw, context).demanding());
  }

  private static TankLoads draw(ExerciseDraw draw, CourseContext context) {
    var units = new DoseUnits(context);
    var rate = draw.sensible(new VolumePerArea(0.2), new VolumePerArea(3), units.rate(), 2);
    var spray = draw.sensible(new VolumePerArea(150), new VolumePerArea(500), units.spray(), 2);
    var tank = draw.sensible(new Volume(200), new Volume(1000), units.water(), 2);
    double onTank = tank.litres() / spray.litresPerHectare();
    double loads = draw.whole(1, 4) + 0.15 + 0.7 * draw.share();
    var low = new Area(onTank * loads * 9_800);
    // Three digits keep the last load away from a full and from an empty one.
    var area = draw.sensible(low, low.times(1.04), units.land(), 3);
    return new TankLoads(rate, spray, tank, area, draw.oneOf(context.setting().fields()), context);
  }

  private DoseUnits units() {
    return new DoseUnits(context);
  }

  private ExerciseBody.Builder story() {
    var units = units();
    var words = units.words();
    return ExerciseBody.titled(words.say("tank.title"))
        .story(
            words.say(
                "tank.story",
                "field",
                field,
                "area",
                words.exact(area, units.land()),
                "rate",
                words.exact(rate, units.rate()),
                "spray",
                words.exact(spray, units.spray()),
                "tank",
                words.exact(tank, units.water())))
        .givens(
            Givens.none()
                .withQuantity("rate", rate)
                .withQuantity("spray", spray)
                .withQuantity("tank", tank)
                .withQuantity("area", area))
        .cautions(Caution.all());
  }

  private ExerciseBody routine() {
    var words = units().words();
    return story()
        .part(words.say("tank.a", "unit", units().land().symbol()), earlier -> landPerTank())
        .part(words.say("tank.b", "unit", units().measure().symbol()), this::fullTank)
        .part(words.say("tank.c", "unit", units().measure().symbol()), this::lastLoad)
        .build();
  }

  /** The adviser's plan of loads. */
  private TankMix plan(Area ground, SprayVolume volume, ProductPerArea dose) {
    return TankMixPlan.of(
            new SprayedField(field, ground, units().land()), volume, SprayTank.mounted(tank))
        .with(TankPartner.of(PRODUCT, dose))
        .evaluate();
  }

  private static TankLoad part(TankMix mix) {
    return mix.partLoad()
        .orElseThrow(() -> new IllegalArgumentException("all loads are full: " + mix.loads()));
  }

  private SolvedPart landPerTank() {
    var units = units();
    var words = units.words();
    var right = new SprayVolume(spray).areaOf(tank);
    var part =
        units
            .part("tank")
            .step(
                "tank.a",
                words.exact(tank, units.water()) + " ÷ " + words.exact(spray, units.spray()),
                words.show(right, units.land()))
            .slip(
                DosingMistake.TANK_DIVISION_INVERTED,
                units.area(spray.in(units.spray()) / tank.in(units.water())));
    double number = right.in(units.land());
    return units
        .mixedUpLand(part, true, units.area(number / units.otherLand()))
        .answer(units.area(number));
  }

  private SolvedPart fullTank(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var onTank = earlier.quantity(0, Area.class);
    var right = rate.times(onTank);
    double number = rate.in(units.rate());
    return units
        .part("tank")
        .step(
            "tank.b",
            words.exact(rate, units.rate()) + " × " + words.show(onTank, units.land()),
            words.show(right, units.measure()))
        .slip(DosingMistake.TANK_FILLED_FOR_FIELD, units.poured(rate.times(area)))
        .slip(DosingMistake.RATE_PER_TANK, units.poured(Volume.of(number, units.measure())))
        .slip(
            DosingMistake.RATE_DIVIDED_BY_AREA,
            units.poured(Volume.of(number / onTank.in(units.land()), units.measure())))
        .answer(units.poured(right));
  }

  private SolvedPart lastLoad(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var onTank = earlier.quantity(0, Area.class);
    var full = earlier.quantity(1, Volume.class);
    var volume = new SprayVolume(tank.dividedBy(onTank));
    var last = part(plan(area, volume, units.product(full.dividedBy(onTank))));
    var right = DoseUnits.volume(last.amountOf(PRODUCT));
    double tanks = Math.rint(area.minus(last.area()).ratioTo(onTank));
    return units
        .part("tank")
        .step(
            "tank.rest",
            words.exact(area, units.land())
                + " − "
                + words.exact(tanks)
                + " × "
                + words.show(onTank, units.land()),
            words.show(last.area(), units.land()))
        .step(
            "tank.c",
            words.show(full, units.measure())
                + " × "
                + words.show(last.area(), units.land())
                + " ÷ "
                + words.show(onTank, units.land()),
            words.show(right, units.measure()))
        .slip(DosingMistake.LAST_LOAD_AS_FULL, units.poured(full))
        .slip(DosingMistake.LAST_LOAD_AS_WHAT_IS_MISSING, units.poured(full.minus(right)))
        .slip(DosingMistake.TANK_FILLED_FOR_FIELD, units.poured(rate.times(area)))
        .answer(units.poured(right));
  }

  private ExerciseBody demanding() {
    var words = units().words();
    return story()
        .part(words.say("tank.spray", "unit", units().water().symbol()), earlier -> sprayOfField())
        .part(words.say("tank.count"), this::fullTanks)
        .part(words.say("tank.last.spray", "unit", units().water().symbol()), this::lastSpray)
        .part(words.say("tank.c", "unit", units().measure().symbol()), this::lastProduct)
        .build();
  }

  private SolvedPart sprayOfField() {
    var units = units();
    var words = units.words();
    var right = new SprayVolume(spray).on(area);
    double number = spray.in(units.spray());
    var part =
        units
            .part("tank")
            .step(
                "tank.spray",
                words.exact(spray, units.spray()) + " × " + words.exact(area, units.land()),
                words.show(right, units.water()))
            .slip(DosingMistake.RATE_DIVIDED_BY_AREA, water(number / area.in(units.land())))
            .slip(DosingMistake.RATE_TAKEN_AS_TOTAL, water(number));
    double litres = right.in(units.water());
    return units.mixedUpLand(part, true, water(litres * units.otherLand())).answer(water(litres));
  }

  private MeasuredAnswer<Volume> water(double number) {
    var unit = units().water();
    return MeasuredAnswer.of(Volume.of(number, unit), unit);
  }

  private SolvedPart fullTanks(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var needed = earlier.quantity(0, Volume.class);
    long full = (long) Math.floor(needed.ratioTo(tank));
    return units
        .part("tank")
        .step(
            "tank.count",
            words.show(needed, units.water()) + " ÷ " + words.exact(tank, units.water()),
            words.number(needed.ratioTo(tank)) + " → " + words.exact((double) full))
        .slip(DosingMistake.PART_LOAD_COUNTED_AS_FULL, NumberAnswer.whole(full + 1))
        .answer(NumberAnswer.whole(full, words.say(full == 1 ? "tank" : "tanks")));
  }

  private SolvedPart lastSpray(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var needed = earlier.quantity(0, Volume.class);
    double full = earlier.number(1);
    var right = needed.minus(tank.times(full));
    return units
        .part("tank")
        .step(
            "tank.last.spray",
            words.show(needed, units.water())
                + " − "
                + words.exact(full)
                + " × "
                + words.exact(tank, units.water()),
            words.show(right, units.water()))
        .slip(DosingMistake.LAST_LOAD_AS_FULL, water(tank.in(units.water())))
        .slip(
            DosingMistake.LAST_LOAD_AS_WHAT_IS_MISSING, water(tank.minus(right).in(units.water())))
        .answer(water(right.in(units.water())));
  }

  private SolvedPart lastProduct(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var last = earlier.quantity(2, Volume.class);
    var volume = new SprayVolume(spray);
    var partner = TankPartner.of(PRODUCT, units.product(rate));
    var right = DoseUnits.volume(partner.in(last, volume));
    var full = DoseUnits.volume(partner.in(tank, volume));
    return units
        .part("tank")
        .step(
            "tank.product",
            words.exact(rate, units.rate())
                + " × "
                + words.show(last, units.water())
                + " ÷ "
                + words.exact(spray, units.spray()),
            words.show(right, units.measure()))
        .slip(DosingMistake.LAST_LOAD_AS_FULL, units.poured(full))
        .slip(DosingMistake.TANK_FILLED_FOR_FIELD, units.poured(rate.times(area)))
        .slip(
            DosingMistake.RATE_PER_TANK,
            units.poured(Volume.of(rate.in(units.rate()), units.measure())))
        .answer(units.poured(right));
  }
}
