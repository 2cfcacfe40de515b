package agro.course.topic.dose;

import agro.course.AnswerTolerance;
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
import agro.course.UnitSizes;
import agro.dose.ProductAmount;
import agro.dose.ProductPerSprayVolume;
import agro.dose.WrittenAmount;
import agro.dose.scaling.PlantSpacing;
import agro.source.Reference;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Volume;
import agro.units.VolumePerVolume;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Drenching the soil at each plant: number of plants, solution, product.
 *
 * @param rows distance between the rows
 * @param plants distance in the row
 * @param area size of the piece
 * @param perPlant solution for a plant
 * @param strength product per solution
 * @param names field and crop
 * @param context for whom
 */
record SoilDrench(
    Length rows,
    Length plants,
    Area area,
    Volume perPlant,
    VolumePerVolume strength,
    List<String> names,
    CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "dose-drench",
        CourseTopic.DOSE,
        EnumSet.of(Difficulty.ROUTINE),
        Set.of(
            DosingMistake.ONE_SPACING_ONLY,
            DosingMistake.MULTIPLIED_BY_SPACING,
            DosingMistake.SMALL_UNIT_AS_LARGE,
            DosingMistake.PER_LITRE_TAKEN_PER_PLANT,
            DosingMistake.SPRAY_DIVIDED_BY_STRENGTH,
            DosingMistake.DIVIDED_BY_DOSE),
        (draw, difficulty, context) -> draw(draw, context).body());
  }

  private static SoilDrench draw(ExerciseDraw draw, CourseContext context) {
    var units = new DoseUnits(context);
    boolean inches = units.spacing() == LengthUnit.INCH;
    double rows = inches ? draw.step(18, 36, 1) : draw.step(45, 90, 5);
    double plants = inches ? draw.step(10, 22, 1) : draw.step(25, 60, 5);
    var area = draw.sensible(new Area(300), new Area(4_000), units.land(), 2);
    double perPlant = units.american() ? draw.step(1, 4, 0.5) : draw.step(30, 120, 10);
    var strength =
        draw.sensible(new VolumePerVolume(0.5), new VolumePerVolume(2.5), units.strength(), 2);
    return new SoilDrench(
        Length.of(rows, units.spacing()),
        Length.of(plants, units.spacing()),
        area,
        Volume.of(perPlant, units.measure()),
        strength,
        List.of(draw.oneOf(context.setting().fields()), draw.oneOf(context.setting().crops())),
        context);
  }

  private DoseUnits units() {
    return new DoseUnits(context);
  }

  private ExerciseBody body() {
    var units = units();
    var words = units.words();
    return ExerciseBody.titled(words.say("drench.title"))
        .story(
            words.say(
                "drench.story",
                "field",
                names.get(0),
                "crop",
                names.get(1),
                "area",
                words.exact(area, units.land()),
                "rows",
                words.exact(rows, units.spacing()),
                "plants",
                words.exact(plants, units.spacing())))
        .story(
            words.say(
                "drench.dose",
                "volume",
                words.exact(perPlant, units.measure()),
                "strength",
                words.exact(strength, units.strength())))
        .story(units.given(sizes()))
        .givens(
            Givens.none()
                .withQuantity("rows", rows)
                .withQuantity("plants", plants)
                .withQuantity("area", area)
                .withQuantity("volume", perPlant)
                .withQuantity("strength", strength))
        .part(words.say("drench.a"), earlier -> count())
        .part(words.say("drench.b", "unit", units.water().symbol()), this::solution)
        .part(words.say("drench.c", "unit", units.measure().symbol()), this::product)
        .source(Reference.commonPractice("Drenching the soil at each plant"))
        .cautions(Caution.all())
        .build();
  }

  private AreaUnit square() {
    return units().spacing() == LengthUnit.INCH ? AreaUnit.SQUARE_FOOT : AreaUnit.SQUARE_METRE;
  }

  private UnitSizes sizes() {
    var units = units();
    return UnitSizes.in(units.words())
        .and(units.land(), square())
        .and(context.units().course(), units.spacing())
        .and(units.water(), units.measure());
  }

  private NumberAnswer plants(double number) {
    return new NumberAnswer(
        number, 0, AnswerTolerance.usual(number), List.of(units().words().say("plants")));
  }

  private SolvedPart count() {
    var units = units();
    var words = units.words();
    var spacing = new PlantSpacing(rows, plants);
    double right = spacing.plantsOn(area);
    double side = context.units().course().toBase(1);
    return units
        .part("drench")
        .step(
            "drench.a",
            words.show(area, square())
                + " ÷ ("
                + words.show(rows, context.units().course())
                + " × "
                + words.show(plants, context.units().course())
                + ")",
            words.number(right))
        .slip(DosingMistake.ONE_SPACING_ONLY, plants(area.squareMetres() / side / rows.metres()))
        .slip(
            DosingMistake.MULTIPLIED_BY_SPACING,
            plants(
                area.squareMetres()
                    / (side * side)
                    * spacing.groundOfPlant().squareMetres()
                    / (side * side)))
        .answer(plants(right));
  }

  private SolvedPart solution(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    double number = earlier.number(0);
    var right = perPlant.times(number);
    return units
        .part("drench")
        .step(
            "drench.b",
            words.number(number) + " × " + words.exact(perPlant, units.measure()),
            words.show(right, units.measure()) + " = " + words.show(right, units.water()))
        .slip(DosingMistake.SMALL_UNIT_AS_LARGE, water(right.in(units.measure())))
        .slip(DosingMistake.DIVIDED_BY_DOSE, water(number / perPlant.in(units.measure())))
        .answer(water(right.in(units.water())));
  }

  private MeasuredAnswer<Volume> water(double number) {
    var unit = units().water();
    return MeasuredAnswer.of(Volume.of(number, unit), unit);
  }

  private SolvedPart product(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    var solution = earlier.quantity(1, Volume.class);
    var mixed =
        new ProductPerSprayVolume(
            ProductAmount.liquid(strength.in(units.strength()), units.measure()),
            WrittenAmount.one(units.water()));
    var right = DoseUnits.volume(mixed.in(solution));
    double number = strength.in(units.strength());
    return units
        .part("drench")
        .step(
            "drench.c",
            words.show(solution, units.water()) + " × " + words.exact(strength, units.strength()),
            words.show(right, units.measure()))
        .slip(DosingMistake.PER_LITRE_TAKEN_PER_PLANT, product(number * earlier.number(0)))
        .slip(DosingMistake.SPRAY_DIVIDED_BY_STRENGTH, product(solution.in(units.water()) / number))
        .answer(product(right.in(units.measure())));
  }

  private MeasuredAnswer<Volume> product(double number) {
    return units().poured(Volume.of(number, units().measure()));
  }
}
