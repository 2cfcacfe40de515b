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
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.MassPerVolume;
import agro.units.MassPerVolumeUnit;
import agro.units.MassUnit;
import agro.units.Unit;
import agro.units.VolumePerArea;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.Set;

/**
 * Active ingredient per area from a content in per cent: per cent to mass per volume, then times
 * the rate, then into the units of another country.
 *
 * @param percent content, mass by volume
 * @param rate product per land of the class
 * @param context for whom
 */
record ActivePerLand(double percent, VolumePerArea rate, CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "units-active",
        CourseTopic.UNITS,
        EnumSet.of(Difficulty.ROUTINE),
        Set.of(
            UnitMistake.PER_MILLE_FOR_PERCENT,
            UnitMistake.PERCENT_AS_WHOLE_NUMBER,
            UnitMistake.ACTIVE_FOR_PRODUCT,
            UnitMistake.RATE_DIVIDED_BY_CONTENT,
            UnitMistake.LAND_NOT_CONVERTED,
            UnitMistake.LAND_FACTOR_INVERTED,
            UnitMistake.AMOUNT_NOT_CONVERTED),
        (draw, difficulty, context) -> draw(draw, context).body());
  }

  private static ActivePerLand draw(ExerciseDraw draw, CourseContext context) {
    var units = context.units();
    double percent = draw.step(5, 50, 0.5);
    var rate =
        draw.sensible(
            new VolumePerArea(0.3),
            new VolumePerArea(4),
            VolumePerArea.unit(units.measure(), units.land()),
            2);
    return new ActivePerLand(percent, rate, context);
  }

  private CourseWords words() {
    return context.words().in(ActivePerLand.class, "units");
  }

  private Unit<MassPerVolume> content() {
    return Factors.american(context.units())
        ? MassPerVolumeUnit.POUND_PER_US_GALLON
        : MassPerVolumeUnit.GRAM_PER_LITRE;
  }

  private Unit<MassPerArea> own() {
    return MassPerArea.unit(Factors.active(context.units()), context.units().land());
  }

  private Unit<Area> foreignLand() {
    return context.units().land() == AreaUnit.HECTARE ? AreaUnit.ACRE : AreaUnit.HECTARE;
  }

  private Unit<Mass> foreignMass() {
    return Factors.american(context.units()) ? MassUnit.KILOGRAM : MassUnit.POUND;
  }

  private Unit<MassPerArea> foreign() {
    return MassPerArea.unit(foreignMass(), foreignLand());
  }

  private Unit<VolumePerArea> rateUnit() {
    return VolumePerArea.unit(context.units().measure(), context.units().land());
  }

  private ExerciseBody body() {
    var words = words();
    var units = context.units();
    var factors =
        UnitSizes.in(words)
            .and(MassUnit.POUND, MassUnit.KILOGRAM)
            .and(foreignLand(), units.land())
            .and(units.water(), units.measure());
    if (Factors.american(units)) {
      factors.and(MassPerVolumeUnit.POUND_PER_US_GALLON, MassPerVolumeUnit.GRAM_PER_LITRE);
    }
    return ExerciseBody.titled(words.say("active.title"))
        .story(
            words.say(
                "active.story",
                "percent",
                words.exact(percent),
                "rate",
                words.exact(rate, rateUnit())))
        .story(Factors.say(words, factors))
        .givens(Givens.none().withNumber("percent", percent).withQuantity("rate", rate))
        .part(words.say("active.a", "unit", content().symbol()), earlier -> solveContent())
        .part(words.say("active.b", "unit", own().symbol()), this::solveActive)
        .part(words.say("active.c", "unit", foreign().symbol()), this::solveForeign)
        .cautions(Caution.all())
        .build();
  }

  private SolutionDraft part() {
    return SolutionDraft.titled(words(), words().say("active.title"));
  }

  private SolvedPart solveContent() {
    var words = words();
    var right = MassPerVolume.of(percent, MassPerVolumeUnit.PERCENT);
    return part()
        .step("active.a", contentText(), words.show(right, content()))
        .slip(UnitMistake.PER_MILLE_FOR_PERCENT, MeasuredAnswer.of(right.times(0.1), content()))
        .slip(UnitMistake.PERCENT_AS_WHOLE_NUMBER, MeasuredAnswer.of(right.times(100), content()))
        .answer(MeasuredAnswer.of(right, content()));
  }

  private String contentText() {
    var words = words();
    var grams = words.exact(percent) + " × 10 g/L";
    double size = content().toBase(1);
    return size == 1 ? grams : grams + " ÷ " + words.number(size) + " g/L";
  }

  private SolvedPart solveActive(EarlierAnswers earlier) {
    var words = words();
    var strength = earlier.quantity(0, MassPerVolume.class);
    var right = rate.times(strength);
    var units = context.units();
    double perWater = rate.in(VolumePerArea.unit(units.water(), units.land()));
    double divided = perWater / strength.in(content());
    return part()
        .step(
            "active.b",
            words.show(rate, VolumePerArea.unit(units.water(), units.land()))
                + " × "
                + words.show(strength, content()),
            words.show(right, own()))
        .slip(UnitMistake.ACTIVE_FOR_PRODUCT, mass(perWater))
        .slip(UnitMistake.RATE_DIVIDED_BY_CONTENT, mass(divided))
        .answer(MeasuredAnswer.of(right, own()));
  }

  private MeasuredAnswer<MassPerArea> mass(double number) {
    return MeasuredAnswer.of(MassPerArea.of(number, own()), own());
  }

  private SolvedPart solveForeign(EarlierAnswers earlier) {
    var words = words();
    var active = earlier.quantity(1, MassPerArea.class);
    double stated = active.in(own());
    double right = active.in(foreign());
    double land = context.units().land().toBase(1) / foreignLand().toBase(1);
    return part()
        .step(
            "active.c",
            words.number(stated)
                + " × "
                + Factors.size(words, Factors.active(context.units()), foreignMass())
                + " ÷ "
                + Factors.size(words, context.units().land(), foreignLand()),
            words.show(active, foreign()))
        .slip(UnitMistake.LAND_NOT_CONVERTED, away(right * land))
        .slip(UnitMistake.LAND_FACTOR_INVERTED, away(right * land * land))
        .slip(UnitMistake.AMOUNT_NOT_CONVERTED, away(stated / land))
        .answer(away(right));
  }

  private MeasuredAnswer<MassPerArea> away(double number) {
    return MeasuredAnswer.of(MassPerArea.of(number, foreign()), foreign());
  }
}
