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
import agro.dose.ContentByMass;
import agro.dose.ProductAmount;
import agro.dose.scaling.Dilution;
import agro.units.MassPerMass;
import agro.units.MassPerMassUnit;
import agro.units.MassPerVolume;
import agro.units.MassPerVolumeUnit;
import agro.units.MassUnit;
import agro.units.Volume;
import agro.units.VolumeUnit;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A series of dilutions for a bioassay: stock from a weighed product, a first solution, and further
 * steps. Laboratories measure in metric units everywhere.
 *
 * @param milligrams product weighed
 * @param percent content of the product, mass by mass
 * @param flask volume to which it is made up
 * @param first concentration of the first solution
 * @param volume volume of the first solution
 * @param factor one part in so many at each step
 * @param steps number of steps
 * @param context for whom
 */
record StockSeries(
    double milligrams,
    double percent,
    Volume flask,
    MassPerVolume first,
    Volume volume,
    int factor,
    int steps,
    CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "dose-stock",
        CourseTopic.DOSE,
        EnumSet.of(Difficulty.ROUTINE),
        Set.of(
            DosingMistake.ACTIVE_FOR_PRODUCT,
            DosingMistake.CONTENT_DIVIDED,
            DosingMistake.DILUTION_INVERTED,
            DosingMistake.DILUENT_AS_STOCK,
            DosingMistake.FACTOR_TIMES_STEPS,
            DosingMistake.PARTS_ADDED),
        (draw, difficulty, context) -> draw(draw, context).body());
  }

  private static StockSeries draw(ExerciseDraw draw, CourseContext context) {
    double milligrams = draw.step(200, 2_000, 50);
    double percent = draw.step(10, 80, 5);
    double flask = draw.oneOf(List.of(100.0, 200.0, 250.0, 500.0));
    double stock = 10 * milligrams * percent / flask;
    double first = draw.sensible(stock / 40, stock / 4, 2);
    double volume = draw.oneOf(List.of(50.0, 100.0, 200.0, 250.0));
    int factor = draw.oneOf(List.of(2, 3, 4, 5, 10));
    int steps = draw.whole(2, 4);
    return new StockSeries(
        milligrams,
        percent,
        Volume.of(flask, VolumeUnit.MILLILITRE),
        MassPerVolume.of(first, MassPerVolumeUnit.MILLIGRAM_PER_LITRE),
        Volume.of(volume, VolumeUnit.MILLILITRE),
        factor,
        steps,
        context);
  }

  private DoseUnits units() {
    return new DoseUnits(context);
  }

  private ExerciseBody body() {
    var words = units().words();
    return ExerciseBody.titled(words.say("stock.title"))
        .story(
            words.say(
                "stock.story",
                "mass",
                words.exact(milligrams) + " mg",
                "percent",
                words.exact(percent),
                "flask",
                words.exact(flask, VolumeUnit.MILLILITRE)))
        .story(
            words.say("stock.series", "factor", words.exact(factor), "steps", words.exact(steps)))
        .givens(
            Givens.none()
                .withNumber("milligrams", milligrams)
                .withNumber("percent", percent)
                .withQuantity("flask", flask)
                .withQuantity("first", first)
                .withQuantity("volume", volume)
                .withNumber("factor", factor)
                .withNumber("steps", steps))
        .part(words.say("stock.a", "unit", "mg/L"), earlier -> stock())
        .part(
            words.say(
                "stock.b",
                "volume",
                words.exact(volume, VolumeUnit.MILLILITRE),
                "first",
                words.exact(first, MassPerVolumeUnit.MILLIGRAM_PER_LITRE)),
            this::taken)
        .part(words.say("stock.c", "unit", "mg/L"), earlier -> last())
        .cautions(Caution.all())
        .build();
  }

  private static MeasuredAnswer<MassPerVolume> strength(double number) {
    var unit = MassPerVolumeUnit.MILLIGRAM_PER_LITRE;
    return MeasuredAnswer.of(MassPerVolume.of(number, unit), unit);
  }

  private static MeasuredAnswer<Volume> volume(double number) {
    return MeasuredAnswer.of(Volume.of(number, VolumeUnit.MILLILITRE), VolumeUnit.MILLILITRE);
  }

  private SolvedPart stock() {
    var words = units().words();
    double litres = flask.litres();
    var content = new ContentByMass(MassPerMass.of(percent, MassPerMassUnit.PERCENT));
    var active = content.activeIn(ProductAmount.solid(milligrams, MassUnit.MILLIGRAM));
    double right = active.range().low().in(MassUnit.MILLIGRAM) / litres;
    return units()
        .part("stock")
        .step(
            "stock.a",
            words.exact(milligrams)
                + " mg × "
                + words.exact(percent)
                + " ÷ 100 ÷ "
                + words.exact(flask, VolumeUnit.LITRE),
            words.number(right) + " mg/L")
        .slip(DosingMistake.ACTIVE_FOR_PRODUCT, strength(milligrams / litres))
        .slip(DosingMistake.CONTENT_DIVIDED, strength(milligrams / (percent / 100) / litres))
        .answer(strength(right));
  }

  private SolvedPart taken(EarlierAnswers earlier) {
    var words = units().words();
    var stock = earlier.quantity(0, MassPerVolume.class);
    double right =
        Dilution.stockFor(stock, first, volume).evaluate().stockAmount().in(VolumeUnit.MILLILITRE);
    double whole = volume.in(VolumeUnit.MILLILITRE);
    return units()
        .part("stock")
        .step(
            "stock.b",
            words.exact(volume, VolumeUnit.MILLILITRE)
                + " × "
                + words.exact(first, MassPerVolumeUnit.MILLIGRAM_PER_LITRE)
                + " ÷ "
                + words.show(stock, MassPerVolumeUnit.MILLIGRAM_PER_LITRE),
            words.number(right) + " mL")
        .slip(DosingMistake.DILUTION_INVERTED, volume(whole * stock.ratioTo(first)))
        .slip(DosingMistake.DILUENT_AS_STOCK, volume(whole - right))
        .answer(volume(right));
  }

  private SolvedPart last() {
    var words = units().words();
    var one = new Volume(1);
    var strength = first;
    for (int step = 0; step < steps; step++) {
      strength = Dilution.strengthOf(strength, one, one.times(factor)).evaluate().strength();
    }
    double begin = first.in(MassPerVolumeUnit.MILLIGRAM_PER_LITRE);
    return units()
        .part("stock")
        .step(
            "stock.c",
            words.exact(first, MassPerVolumeUnit.MILLIGRAM_PER_LITRE)
                + (" ÷ " + words.exact(factor)).repeat(steps),
            words.show(strength, MassPerVolumeUnit.MILLIGRAM_PER_LITRE))
        .slip(DosingMistake.FACTOR_TIMES_STEPS, strength(begin / factor / steps))
        .slip(DosingMistake.PARTS_ADDED, strength(begin / StrictMath.pow(factor + 1, steps)))
        .answer(strength(strength.in(MassPerVolumeUnit.MILLIGRAM_PER_LITRE)));
  }
}
