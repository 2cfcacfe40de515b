package agro.course.topic.units;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseUnits;
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
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A rate in foreign units, converted into those of the class.
 *
 * @param rate the rate
 * @param from amount of the foreign unit
 * @param land land of the foreign unit
 * @param to amount that is asked for, per land of the class
 * @param context for whom
 */
record ForeignRate(
    VolumePerArea rate,
    Unit<Volume> from,
    Unit<Area> land,
    Unit<Volume> to,
    CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "units-rate",
        CourseTopic.UNITS,
        EnumSet.of(Difficulty.BASIC),
        Set.of(
            UnitMistake.LAND_NOT_CONVERTED,
            UnitMistake.LAND_FACTOR_INVERTED,
            UnitMistake.AMOUNT_NOT_CONVERTED,
            UnitMistake.IMPERIAL_FOR_US),
        (draw, difficulty, context) -> draw(draw, context).body());
  }

  private static ForeignRate draw(ExerciseDraw draw, CourseContext context) {
    var units = context.units();
    boolean water = draw.whole(0, 3) == 0;
    var land = units.land() == AreaUnit.HECTARE ? AreaUnit.ACRE : AreaUnit.HECTARE;
    var from = draw.oneOf(water ? waters(units) : measures(units));
    var unit = VolumePerArea.unit(from, land);
    var rate =
        water
            ? draw.sensible(new VolumePerArea(100), new VolumePerArea(800), unit, 2)
            : draw.sensible(new VolumePerArea(0.2), new VolumePerArea(4), unit, 2);
    return new ForeignRate(rate, from, land, water ? units.water() : units.measure(), context);
  }

  private static List<Unit<Volume>> measures(CourseUnits units) {
    return units.land() == AreaUnit.HECTARE
        ? List.of(VolumeUnit.US_FLUID_OUNCE, VolumeUnit.US_PINT, VolumeUnit.MILLILITRE)
        : List.of(VolumeUnit.MILLILITRE, VolumeUnit.LITRE);
  }

  private static List<Unit<Volume>> waters(CourseUnits units) {
    return units.land() == AreaUnit.HECTARE
        ? List.of(VolumeUnit.US_GALLON, VolumeUnit.LITRE)
        : List.of(VolumeUnit.LITRE);
  }

  private CourseWords words() {
    return context.words().in(ForeignRate.class, "units");
  }

  private Unit<VolumePerArea> source() {
    return VolumePerArea.unit(from, land);
  }

  private Unit<VolumePerArea> target() {
    return VolumePerArea.unit(to, context.units().land());
  }

  private ExerciseBody body() {
    var words = words();
    return ExerciseBody.titled(words.say("rate.title"))
        .story(words.say("rate.story", "rate", words.exact(rate, source())))
        .story(
            Factors.say(words, UnitSizes.in(words).and(from, to).and(land, context.units().land())))
        .givens(
            Givens.none()
                .withQuantity("rate", rate)
                .withText("unit", to == context.units().measure() ? "measure" : "water"))
        .part(words.say("rate.question", "unit", target().symbol()), earlier -> solve())
        .cautions(Caution.all())
        .build();
  }

  private SolvedPart solve() {
    var words = words();
    double volume = from.toBase(1) / to.toBase(1);
    double area = land.toBase(1) / context.units().land().toBase(1);
    double stated = rate.in(source());
    double right = rate.in(target());
    var part =
        SolutionDraft.titled(words, words.say("rate.title"))
            .step(
                "rate",
                words.exact(stated)
                    + " × "
                    + Factors.size(words, from, to)
                    + " ÷ "
                    + Factors.size(words, land, context.units().land()),
                words.show(rate, target()))
            .slip(UnitMistake.LAND_NOT_CONVERTED, answer(stated * volume))
            .slip(UnitMistake.LAND_FACTOR_INVERTED, answer(stated * volume * area));
    if (from != to) {
      part.slip(UnitMistake.AMOUNT_NOT_CONVERTED, answer(stated / area));
    }
    double imperial = Factors.imperial(from) / Factors.imperial(to);
    if (imperial != 1) {
      part.slip(UnitMistake.IMPERIAL_FOR_US, answer(right * imperial));
    }
    return part.answer(answer(right));
  }

  private MeasuredAnswer<VolumePerArea> answer(double number) {
    return MeasuredAnswer.of(VolumePerArea.of(number, target()), target());
  }
}
