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
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.SprayVolume;
import agro.dose.sprayer.MeasuredPlot;
import agro.dose.sprayer.SprayCalibration;
import agro.dose.sprayer.SprayLayout;
import agro.dose.sprayer.SprayerFlow;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.QuantityRange;
import agro.units.Speed;
import agro.units.VolumePerArea;
import agro.working.Caution;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The dose really given when the tank was mixed for another volume than the sprayer puts out. */
final class MixedForAnother implements ExerciseType {

  private static final double NEAR = 0.06;

  private static final VolumePerArea LEAST = new VolumePerArea(100);
  private static final VolumePerArea MOST = new VolumePerArea(400);

  private record Sprayer(FlowRate flow, Length swath, Speed speed) {
    VolumePerArea volume() {
      return SprayCalibration.ofSprayer(SprayLayout.lance(1, swath), new SprayerFlow(flow), speed)
          .evaluate()
          .perFieldArea()
          .perArea();
    }
  }

  @Override
  public String code() {
    return "calibration-mismatch";
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
        CalibrationMistake.SPEED_PER_SECOND_IN_EQUATION,
        CalibrationMistake.WIDTH_FORGOTTEN,
        CalibrationMistake.RATIO_UPSIDE_DOWN,
        CalibrationMistake.DOSE_AS_INTENDED,
        CalibrationMistake.PER_CENT_OF_GIVEN,
        CalibrationMistake.SHARE_FOR_DEPARTURE,
        CalibrationMistake.SIGN_TURNED);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var sprayer = sprayer(draw, units);
    var mixed = draw.sensible(0.7, 1.4, 2);
    while (Math.abs(mixed - 1) < NEAR) {
      mixed = draw.sensible(0.7, 1.4, 2);
    }
    var about = sprayer.volume().times(mixed);
    var mixedFor = draw.sensible(about.times(0.99), about.times(1.01), units.volume(), 2);
    var dose = draw.sensible(new VolumePerArea(0.25), new VolumePerArea(2.5), units.dose(), 2);
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(MixedForAnother.class, "calibration");
    return ExerciseBody.titled(words.say("mismatch.title"))
        .story(
            words.say(
                "mismatch.story",
                "field",
                field,
                "flow",
                words.exact(sprayer.flow(), units.flow()),
                "swath",
                words.exact(sprayer.swath(), context.units().course()),
                "speed",
                words.exact(sprayer.speed(), context.units().speed()),
                "volume",
                words.exact(mixedFor, units.volume()),
                "dose",
                words.exact(dose, units.dose())))
        .story(units.givenEquation(words, context.units().course()))
        .givens(
            Givens.none()
                .withQuantity("flow", sprayer.flow())
                .withQuantity("swath", sprayer.swath())
                .withQuantity("speed", sprayer.speed())
                .withQuantity("mixedFor", mixedFor)
                .withQuantity("dose", dose))
        .part(
            words.say("mismatch.question.volume", "unit", units.volume().symbol()),
            earlier -> volume(sprayer, context))
        .part(
            words.say("mismatch.question.dose", "unit", units.dose().symbol()),
            earlier -> dose(earlier.quantity(0, VolumePerArea.class), mixedFor, dose, context))
        .part(
            words.say("mismatch.question.departure"),
            earlier -> departure(earlier.quantity(1, VolumePerArea.class), dose, context))
        .cautions(Caution.all())
        .build();
  }

  /** A lance as somebody carries it, with a volume per land that is usual for it. */
  private static Sprayer sprayer(ExerciseDraw draw, CalibrationUnits units) {
    var swath =
        Length.of(
            units.feet() ? draw.step(3.5, 6.5, 0.5) : draw.step(1, 2, 0.1),
            units.course().course());
    var speed = units.drawWalk(draw);
    double least = CalibrationUnits.flowFor(LEAST, swath, speed).litresPerMinute();
    double most = CalibrationUnits.flowFor(MOST, swath, speed).litresPerMinute();
    var flow =
        draw.sensible(
            new FlowRate(Math.max(0.6, least)), new FlowRate(Math.min(3, most)), units.flow(), 2);
    return new Sprayer(flow, swath, speed);
  }

  private static SolvedPart volume(Sprayer sprayer, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var course = context.units().course();
    var words = context.words().in(MixedForAnother.class, "calibration");
    var found = sprayer.volume();
    var constant = units.constant(course);
    var slips =
        List.of(
            BoomVolume.slip(
                CalibrationMistake.SPEED_PER_SECOND_IN_EQUATION,
                found.times(units.speedMixUp(sprayer.speed())),
                units),
            BoomVolume.slip(
                CalibrationMistake.WIDTH_FORGOTTEN,
                found.times(sprayer.swath().in(course)),
                units));
    var working =
        Working.of(words.say("mismatch.title"))
            .step(
                words.say("boom.step.volume"),
                words.say(
                    "equation.volume",
                    "constant",
                    words.number(constant),
                    "flow",
                    units.flow().symbol(),
                    "speed",
                    context.units().speed().symbol(),
                    "width",
                    course.symbol()),
                words.number(constant)
                    + " × "
                    + words.exact(sprayer.flow().in(units.flow()))
                    + " / ("
                    + words.exact(sprayer.speed().in(context.units().speed()))
                    + " × "
                    + words.exact(sprayer.swath().in(course))
                    + ")",
                words.show(found, units.volume()));
    return new SolvedPart(MeasuredAnswer.of(found, units.volume()), working, slips);
  }

  private static SolvedPart dose(
      VolumePerArea volume, VolumePerArea mixedFor, VolumePerArea intended, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var words = context.words().in(MixedForAnother.class, "calibration");
    // One hectare on which that volume was used, so that the adviser's own page tells the dose.
    var hectare = Area.of(1, AreaUnit.HECTARE);
    var mismatch =
        MeasuredPlot.of(hectare, volume.times(hectare))
            .evaluate()
            .doseWhenMixedFor(
                ProductPerArea.liquid(QuantityRange.exactly(intended)), new SprayVolume(mixedFor));
    var perHectare = (ProductAmount.Liquid) mismatch.dose().perHectare();
    var found = perHectare.range().low().dividedBy(hectare);
    var slips =
        List.of(
            slip(
                CalibrationMistake.RATIO_UPSIDE_DOWN,
                intended.times(mixedFor.ratioTo(volume)),
                units),
            slip(CalibrationMistake.DOSE_AS_INTENDED, intended, units));
    var working =
        Working.of(words.say("mismatch.title"))
            .step(
                words.say("mismatch.step.dose"),
                words.say("mismatch.formula.dose"),
                words.exact(intended, units.dose())
                    + " × "
                    + words.show(volume, units.volume())
                    + " / "
                    + words.exact(mixedFor, units.volume()),
                words.show(found, units.dose()));
    return new SolvedPart(MeasuredAnswer.of(found, units.dose()), working, slips);
  }

  private static TypicalSlip slip(
      CalibrationMistake mistake, VolumePerArea dose, CalibrationUnits units) {
    return new TypicalSlip(mistake, MeasuredAnswer.of(dose, units.dose()));
  }

  private static SolvedPart departure(
      VolumePerArea given, VolumePerArea intended, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var words = context.words().in(MixedForAnother.class, "calibration");
    double found = 100 * (given.ratioTo(intended) - 1);
    var slips =
        List.of(
            percent(CalibrationMistake.PER_CENT_OF_GIVEN, 100 * (1 - intended.ratioTo(given))),
            percent(CalibrationMistake.SHARE_FOR_DEPARTURE, found + 100),
            percent(CalibrationMistake.SIGN_TURNED, -found));
    var working =
        Working.of(words.say("mismatch.title"))
            .step(
                words.say("mismatch.step.departure"),
                words.say("mismatch.formula.departure"),
                "100 × ("
                    + words.show(given, units.dose())
                    + " / "
                    + words.exact(intended, units.dose())
                    + " − 1)",
                words.number(found, 1) + " %");
    return new SolvedPart(PercentAnswer.rounded(found, 1), working, slips);
  }

  private static TypicalSlip percent(CalibrationMistake mistake, double percent) {
    return new TypicalSlip(mistake, PercentAnswer.rounded(percent, 1));
  }
}
