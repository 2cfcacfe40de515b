package agro.course.topic.dose;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.SolvedPart;
import agro.course.UnitSizes;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.WrittenAmount;
import agro.dose.scaling.RowGranules;
import agro.units.AreaUnit;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.Unit;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.Set;

/**
 * Granules along the row: what a length of row gets from a rate per land.
 *
 * @param rate granules per land
 * @param spacing distance between the rows
 * @param row length of the row
 * @param context for whom
 */
record GranulesInRow(MassPerArea rate, Length spacing, Length row, CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "dose-granules",
        CourseTopic.DOSE,
        EnumSet.of(Difficulty.BASIC),
        Set.of(
            DosingMistake.SPACING_FORGOTTEN,
            DosingMistake.DIVIDED_BY_SPACING,
            DosingMistake.ACRE_FOR_HECTARE,
            DosingMistake.HECTARE_FOR_ACRE),
        (draw, difficulty, context) -> draw(draw, context).body());
  }

  private static GranulesInRow draw(ExerciseDraw draw, CourseContext context) {
    var units = new DoseUnits(context);
    boolean inches = units.spacing() == LengthUnit.INCH;
    var rate =
        draw.sensible(
            new MassPerArea(5),
            new MassPerArea(40),
            MassPerArea.unit(context.units().yield(), units.land()),
            2);
    double spacing = inches ? draw.step(16, 40, 1) : draw.step(40, 95, 5);
    double row = inches ? draw.step(100, 600, 50) : draw.step(40, 240, 10);
    return new GranulesInRow(
        rate,
        Length.of(spacing, units.spacing()),
        Length.of(row, context.units().course()),
        context);
  }

  private DoseUnits units() {
    return new DoseUnits(context);
  }

  private Unit<MassPerArea> rateUnit() {
    return MassPerArea.unit(context.units().yield(), units().land());
  }

  private AreaUnit square() {
    return units().spacing() == LengthUnit.INCH ? AreaUnit.SQUARE_FOOT : AreaUnit.SQUARE_METRE;
  }

  private ExerciseBody body() {
    var units = units();
    var words = units.words();
    var sizes =
        UnitSizes.in(words)
            .and(units.land(), square())
            .and(context.units().course(), units.spacing())
            .and(context.units().yield(), context.units().powder());
    return ExerciseBody.titled(words.say("granules.title"))
        .story(
            words.say(
                "granules.story",
                "rate",
                words.exact(rate, rateUnit()),
                "spacing",
                words.exact(spacing, units.spacing()),
                "row",
                words.exact(row, context.units().course())))
        .story(units.given(sizes))
        .givens(
            Givens.none()
                .withQuantity("rate", rate)
                .withQuantity("spacing", spacing)
                .withQuantity("row", row))
        .part(
            words.say("granules.question", "unit", context.units().powder().symbol()),
            earlier -> solve())
        .cautions(Caution.all())
        .build();
  }

  private SolvedPart solve() {
    var units = units();
    var words = units.words();
    var powder = context.units().powder();
    var perLand =
        new ProductPerArea(
            ProductAmount.solid(rate.in(rateUnit()), context.units().yield()),
            WrittenAmount.one(units.land()));
    var perMetre = new RowGranules(perLand, spacing).evaluate().perMetre();
    var right = DoseUnits.mass(perMetre.along(row));
    var side = Length.of(1, context.units().course());
    var part =
        units
            .part("granules")
            .step(
                "granules.strip",
                words.exact(row, context.units().course())
                    + " × "
                    + words.show(spacing, context.units().course()),
                words.show(row.times(spacing), square())
                    + " = "
                    + words.show(row.times(spacing), units.land()))
            .step(
                "granules.product",
                words.exact(rate, rateUnit())
                    + " × "
                    + words.show(row.times(spacing), units.land()),
                words.show(right, powder))
            .slip(DosingMistake.SPACING_FORGOTTEN, weighed(rate.times(row.times(side))))
            .slip(
                DosingMistake.DIVIDED_BY_SPACING,
                weighed(rate.times(row.times(side)).times(side.ratioTo(spacing))));
    return units
        .mixedUpLand(part, true, weighed(right.times(units.otherLand())))
        .answer(weighed(right));
  }

  private MeasuredAnswer<Mass> weighed(Mass mass) {
    return MeasuredAnswer.weighed(mass, context.units().powder());
  }
}
