package agro.course.topic.calibration;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.dose.PumpsPerArea;
import agro.dose.SprayVolume;
import agro.dose.sprayer.MeasuredPlot;
import agro.units.Area;
import agro.units.Length;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.working.Caution;
import agro.working.Working;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A knapsack on a measured plot: spray volume, area per tank, product per tank. */
final class PlotAndTank implements ExerciseType {

  private record Plot(Length length, Length width, Volume tank, Volume left) {
    Area area() {
      return length.times(width);
    }

    Volume used() {
      return tank.minus(left);
    }
  }

  @Override
  public String code() {
    return "calibration-knapsack";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.CALIBRATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        CalibrationMistake.LEFT_FOR_USED,
        CalibrationMistake.LAND_TEN_TIMES_TOO_SMALL,
        CalibrationMistake.SIDES_ADDED,
        CalibrationMistake.TANKS_FOR_AREA,
        CalibrationMistake.PLOT_FOR_TANK,
        CalibrationMistake.LAND_DOSE_IN_EVERY_TANK,
        CalibrationMistake.DOSE_PER_HUNDRED_OF_WATER);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var plot = plot(draw, units);
    var rate = draw.sensible(new VolumePerArea(0.25), new VolumePerArea(2.5), units.dose(), 2);
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(PlotAndTank.class, "calibration");
    var water = context.units().water();
    var course = context.units().course();
    return ExerciseBody.titled(words.say("knapsack.title"))
        .story(
            words.say(
                "knapsack.story",
                "field",
                field,
                "length",
                words.exact(plot.length(), course),
                "width",
                words.exact(plot.width(), course),
                "tank",
                words.exact(plot.tank(), water),
                "left",
                words.exact(plot.left(), water)))
        .story(words.say("knapsack.rate", "rate", words.exact(rate, units.dose())))
        .story(units.givenLand(words))
        .givens(
            Givens.none()
                .withQuantity("length", plot.length())
                .withQuantity("width", plot.width())
                .withQuantity("tank", plot.tank())
                .withQuantity("left", plot.left())
                .withQuantity("rate", rate))
        .part(
            words.say("knapsack.question.volume", "unit", units.volume().symbol()),
            earlier -> volume(plot, context))
        .part(
            words.say("knapsack.question.area", "unit", units.ground().symbol()),
            earlier -> area(earlier.quantity(0, VolumePerArea.class), plot, context))
        .part(
            words.say("knapsack.question.product", "unit", context.units().measure().symbol()),
            earlier -> product(earlier.quantity(1, Area.class), rate, plot.tank(), context))
        .cautions(Caution.all())
        .build();
  }

  private static Plot plot(ExerciseDraw draw, CalibrationUnits units) {
    var course = units.course().course();
    var water = units.course().water();
    double length = units.feet() ? draw.step(30, 80, 5) : draw.step(10, 25, 1);
    double width = units.feet() ? draw.step(12, 25, 1) : draw.step(4, 8, 0.5);
    var tank =
        Volume.of(
            units.gallons() ? draw.whole(3, 5) : draw.oneOf(List.of(10, 12, 15, 16, 20)), water);
    var area = Length.of(length, course).times(Length.of(width, course));
    var least = new VolumePerArea(150).times(area).in(water);
    var most = Math.min(4 * least, 0.8 * tank.in(water));
    var left =
        BigDecimal.valueOf(tank.in(water) - draw.sensible(least, most, 2))
            .setScale(2, RoundingMode.HALF_EVEN)
            .doubleValue();
    return new Plot(
        Length.of(length, course), Length.of(width, course), tank, Volume.of(left, water));
  }

  private static SolvedPart volume(Plot plot, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var words = context.words().in(PlotAndTank.class, "calibration");
    var water = context.units().water();
    var course = context.units().course();
    var found = MeasuredPlot.of(plot.area(), plot.used()).evaluate().perFieldArea().perArea();
    double one = context.units().land().toBase(1) / units.ground().toBase(1);
    double sides =
        2 * (plot.length().in(course) + plot.width().in(course)) / plot.area().in(units.ground());
    var slips =
        List.of(
            BoomVolume.slip(
                CalibrationMistake.LEFT_FOR_USED,
                found.times(plot.left().ratioTo(plot.used())),
                units),
            BoomVolume.slip(
                CalibrationMistake.LAND_TEN_TIMES_TOO_SMALL, found.dividedBy(10), units),
            BoomVolume.slip(CalibrationMistake.SIDES_ADDED, found.dividedBy(sides), units));
    var working =
        Working.of(words.say("knapsack.title"))
            .step(
                words.say("knapsack.step.used"),
                "",
                words.exact(plot.tank(), water) + " − " + words.exact(plot.left(), water),
                words.show(plot.used(), water))
            .step(
                words.say("knapsack.step.plot"),
                words.say("knapsack.formula.plot"),
                words.exact(plot.length(), course) + " × " + words.exact(plot.width(), course),
                words.show(plot.area(), units.ground()))
            .step(
                words.say("knapsack.step.volume"),
                words.say("knapsack.formula.volume"),
                words.show(plot.used(), water)
                    + " / "
                    + words.show(plot.area(), units.ground())
                    + " × "
                    + words.number(one)
                    + " "
                    + units.ground().symbol()
                    + "/"
                    + context.units().land().symbol(),
                words.show(found, units.volume()));
    return new SolvedPart(MeasuredAnswer.of(found, units.volume()), working, slips);
  }

  private static SolvedPart area(VolumePerArea volume, Plot plot, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var words = context.words().in(PlotAndTank.class, "calibration");
    var land = context.units().land();
    var tanks = PumpsPerArea.from(new SprayVolume(volume), plot.tank(), land);
    var found = tanks.areaPerPump();
    var slips =
        List.of(
            slip(CalibrationMistake.TANKS_FOR_AREA, Area.of(tanks.number(), units.ground()), units),
            slip(CalibrationMistake.PLOT_FOR_TANK, plot.used().dividedBy(volume), units),
            slip(CalibrationMistake.LAND_TEN_TIMES_TOO_SMALL, found.dividedBy(10), units));
    var working =
        Working.of(words.say("knapsack.title"))
            .step(
                words.say("knapsack.step.area"),
                words.say("course.formula.area"),
                words.exact(plot.tank(), context.units().water())
                    + " / "
                    + words.show(volume, units.volume()),
                words.show(found, land) + " = " + words.show(found, units.ground()));
    return new SolvedPart(MeasuredAnswer.of(found, units.ground()), working, slips);
  }

  private static TypicalSlip slip(CalibrationMistake mistake, Area area, CalibrationUnits units) {
    return new TypicalSlip(mistake, MeasuredAnswer.of(area, units.ground()));
  }

  private static SolvedPart product(
      Area area, VolumePerArea rate, Volume tank, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var words = context.words().in(PlotAndTank.class, "calibration");
    var measure = context.units().measure();
    var found = rate.times(area);
    double perLand = rate.in(units.dose());
    var slips =
        List.of(
            new TypicalSlip(
                CalibrationMistake.LAND_DOSE_IN_EVERY_TANK,
                MeasuredAnswer.poured(Volume.of(perLand, measure), measure)),
            new TypicalSlip(
                CalibrationMistake.DOSE_PER_HUNDRED_OF_WATER,
                MeasuredAnswer.poured(
                    Volume.of(perLand * tank.in(context.units().water()) / 100, measure), measure)),
            new TypicalSlip(
                CalibrationMistake.LAND_TEN_TIMES_TOO_SMALL,
                MeasuredAnswer.poured(found.times(10), measure)));
    var land = context.units().land();
    var working =
        Working.of(words.say("knapsack.title"))
            .step(
                words.say("knapsack.step.product"),
                words.say("knapsack.formula.product"),
                words.exact(rate, units.dose()) + " × " + words.show(area, land),
                words.show(found, measure));
    return new SolvedPart(MeasuredAnswer.poured(found, measure), working, slips);
  }
}
