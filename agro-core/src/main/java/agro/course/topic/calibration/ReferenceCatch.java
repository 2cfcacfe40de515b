package agro.course.topic.calibration;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.course.UnitSizes;
import agro.dose.PumpsPerArea;
import agro.dose.SprayVolume;
import agro.dose.sprayer.OunceMethod;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The course on which what is caught is, number for number, the volume per area. */
final class ReferenceCatch implements ExerciseType {

  private static final List<Integer> LONGER = List.of(2, 3, 4, 5, 10);

  @Override
  public String code() {
    return "calibration-course";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.CALIBRATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        CalibrationMistake.BOOM_FOR_SPACING,
        CalibrationMistake.LAND_TEN_TIMES_TOO_SMALL,
        CalibrationMistake.INCHES_AS_FEET,
        CalibrationMistake.LONGER_COURSE_FORGOTTEN,
        CalibrationMistake.CATCH_TIMES_NOZZLES,
        CalibrationMistake.TANKS_FOR_AREA,
        CalibrationMistake.TANK_TIMES_VOLUME);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    double number = units.feet() ? draw.step(12, 40, 2) : draw.step(0.25, 1, 0.05);
    var spacing = Length.of(number, units.spacing());
    int nozzles = draw.whole(4, 24);
    var method = method(spacing, units);
    var perArea = method.reference().volume();
    int times = draw.oneOf(LONGER);
    var low = new VolumePerArea(120).in(perArea) * times;
    var caught = Volume.of(draw.sensible(low, 3 * low, 3), method.reference().caught());
    var tank =
        Volume.of(
            units.gallons() ? draw.whole(2, 10) * 10 : draw.whole(4, 16) * 25,
            context.units().water());
    var words = context.words().in(ReferenceCatch.class, "calibration");
    var givens = Givens.none().withQuantity("spacing", spacing).withNumber("nozzles", nozzles);
    var body =
        told(spacing, nozzles, method, units, words)
            .part(
                words.say("course.question.length", "unit", context.units().course().symbol()),
                earlier -> length(method, nozzles, context));
    if (difficulty == Difficulty.ROUTINE) {
      var sizes = UnitSizes.in(words).and(land(units), context.units().land());
      if (!sizes.print().isEmpty()) {
        body.story(CalibrationUnits.given(words, sizes));
      }
      givens =
          givens
              .withNumber("times", times)
              .withQuantity("caught", caught)
              .withQuantity("tank", tank);
      body.part(
              words.say(
                  "course.question.volume",
                  "times",
                  times,
                  "caught",
                  words.exact(caught, method.reference().caught()),
                  "unit",
                  perArea.symbol()),
              earlier -> volume(method.onCourseTimes(times), caught, nozzles, context))
          .part(
              words.say(
                  "course.question.area",
                  "tank",
                  words.exact(tank, context.units().water()),
                  "unit",
                  context.units().land().symbol()),
              earlier -> area(earlier.quantity(1, VolumePerArea.class), tank, context));
    }
    return body.givens(givens).build();
  }

  private static ExerciseBody.Builder told(
      Length spacing, int nozzles, OunceMethod method, CalibrationUnits units, CourseWords words) {
    return ExerciseBody.titled(words.say("course.title"))
        .story(
            words.say(
                "course.story",
                "nozzles",
                nozzles,
                "spacing",
                words.exact(spacing, units.spacing()),
                "caught",
                method.reference().caught().symbol(),
                "volume",
                method.reference().volume().symbol(),
                "area",
                words.exact(method.reference().area(), units.ground())));
  }

  private static OunceMethod method(Length spacing, CalibrationUnits units) {
    return units.feet() && units.gallons() ? OunceMethod.us(spacing) : OunceMethod.metric(spacing);
  }

  /** Land of the volume that the catch means. */
  private static Unit<Area> land(CalibrationUnits units) {
    return units.feet() && units.gallons() ? AreaUnit.ACRE : AreaUnit.HECTARE;
  }

  private static SolvedPart length(OunceMethod method, int nozzles, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var unit = context.units().course();
    var words = context.words().in(ReferenceCatch.class, "calibration");
    var found = method.evaluate().length();
    var slips = new ArrayList<TypicalSlip>();
    slips.add(slip(CalibrationMistake.BOOM_FOR_SPACING, found.dividedBy(nozzles), context));
    slips.add(slip(CalibrationMistake.LAND_TEN_TIMES_TOO_SMALL, found.dividedBy(10), context));
    if (units.feet()) {
      var asFeet = Length.of(method.width().in(LengthUnit.INCH), LengthUnit.FOOT);
      slips.add(
          slip(
              CalibrationMistake.INCHES_AS_FEET,
              method.reference().area().dividedBy(asFeet),
              context));
    }
    var working =
        Working.of(words.say("course.title"))
            .step(
                words.say("course.step.length"),
                words.say("course.formula.length"),
                words.show(method.reference().area(), units.ground())
                    + " / "
                    + words.show(method.width(), unit),
                words.show(found, unit));
    return new SolvedPart(MeasuredAnswer.of(found, unit), working, slips);
  }

  private static TypicalSlip slip(
      CalibrationMistake mistake, Length length, CourseContext context) {
    return new TypicalSlip(mistake, MeasuredAnswer.of(length, context.units().course()));
  }

  private static SolvedPart volume(
      OunceMethod method, Volume caught, int nozzles, CourseContext context) {
    var unit = method.reference().volume();
    var words = context.words().in(ReferenceCatch.class, "calibration");
    var found = method.volumeFrom(caught).perFieldArea().perArea();
    var slips =
        List.of(
            new TypicalSlip(
                CalibrationMistake.LONGER_COURSE_FORGOTTEN,
                MeasuredAnswer.of(found.times(method.multiple()), unit)),
            new TypicalSlip(
                CalibrationMistake.CATCH_TIMES_NOZZLES,
                MeasuredAnswer.of(found.times(nozzles), unit)));
    var working =
        Working.of(words.say("course.title"))
            .step(
                words.say("course.step.volume"),
                words.say("course.formula.volume"),
                words.exact(caught, method.reference().caught()) + " / " + method.multiple(),
                words.show(found, unit));
    return new SolvedPart(MeasuredAnswer.of(found, unit), working, slips);
  }

  private static SolvedPart area(VolumePerArea volume, Volume tank, CourseContext context) {
    var unit = context.units().land();
    var water = context.units().water();
    var perArea = new CalibrationUnits(context.units()).volume();
    var words = context.words().in(ReferenceCatch.class, "calibration");
    var tanks = PumpsPerArea.from(new SprayVolume(volume), tank, unit);
    var found = tanks.areaPerPump();
    var slips =
        List.of(
            new TypicalSlip(
                CalibrationMistake.TANKS_FOR_AREA,
                MeasuredAnswer.of(Area.of(tanks.number(), unit), unit)),
            new TypicalSlip(
                CalibrationMistake.TANK_TIMES_VOLUME,
                MeasuredAnswer.of(Area.of(tank.in(water) * volume.in(perArea), unit), unit)));
    var working =
        Working.of(words.say("course.title"))
            .step(
                words.say("course.step.area"),
                words.say("course.formula.area"),
                words.exact(tank, water) + " / " + words.show(volume, perArea),
                words.show(found, unit));
    return new SolvedPart(MeasuredAnswer.of(found, unit), working, slips);
  }
}
