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
import agro.dose.sprayer.NozzleFlow;
import agro.dose.sprayer.SprayCalibration;
import agro.dose.sprayer.SprayLayout;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.Speed;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.WorkTime;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The spray volume of a boom from the catch under one nozzle. */
final class BoomVolume implements ExerciseType {

  private static final List<Integer> SECONDS = List.of(15, 20, 30, 40, 45);

  private static final VolumePerArea LEAST = new VolumePerArea(100);
  private static final VolumePerArea MOST = new VolumePerArea(450);

  private record Boom(Volume caught, int seconds, int nozzles, Length spacing, Speed speed) {}

  @Override
  public String code() {
    return "calibration-boom";
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
        CalibrationMistake.CATCH_TIME_AS_MINUTE,
        CalibrationMistake.PER_SECOND_AS_PER_MINUTE,
        CalibrationMistake.ONE_NOZZLE_FOR_ALL,
        CalibrationMistake.SPACING_FOR_WIDTH,
        CalibrationMistake.SPEED_PER_SECOND_IN_EQUATION);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var boom = boom(draw, units);
    int seconds = boom.seconds();
    var caught = boom.caught();
    var measure = context.units().measure();
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(BoomVolume.class, "calibration");
    return ExerciseBody.titled(words.say("boom.title"))
        .story(
            words.say(
                "boom.story",
                "field",
                field,
                "nozzles",
                boom.nozzles(),
                "spacing",
                words.exact(boom.spacing(), units.spacing()),
                "caught",
                words.exact(caught, measure),
                "seconds",
                seconds,
                "speed",
                words.exact(boom.speed(), context.units().speed())))
        .story(units.givenEquation(words, units.spacing()))
        .givens(
            Givens.none()
                .withQuantity("caught", caught)
                .withNumber("seconds", seconds)
                .withNumber("nozzles", boom.nozzles())
                .withQuantity("spacing", boom.spacing())
                .withQuantity("speed", boom.speed()))
        .part(
            words.say("boom.question.flow", "unit", units.flow().symbol()),
            earlier -> flow(caught, seconds, context))
        .part(
            words.say("boom.question.volume", "unit", units.volume().symbol()),
            2,
            earlier -> volume(earlier.quantity(0, FlowRate.class), boom, context))
        .build();
  }

  /** A catch that belongs to a usual volume per land and to a usual nozzle. */
  private static Boom boom(ExerciseDraw draw, CalibrationUnits units) {
    int seconds = draw.oneOf(SECONDS);
    var spacing = units.drawSpacing(draw);
    var speed = units.drawSpeed(draw);
    double least = CalibrationUnits.flowFor(LEAST, spacing, speed).litresPerMinute();
    double most = CalibrationUnits.flowFor(MOST, spacing, speed).litresPerMinute();
    var caught =
        draw.sensible(
            new Volume(Math.max(0.4, least) * seconds / 60),
            new Volume(Math.min(2.4, most) * seconds / 60),
            units.course().measure(),
            2);
    return new Boom(caught, seconds, draw.whole(4, 12), spacing, speed);
  }

  private static SolvedPart flow(Volume caught, int seconds, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var words = context.words().in(BoomVolume.class, "calibration");
    var found = caught.dividedBy(new WorkTime(seconds));
    var measure = context.units().measure();
    var working =
        Working.of(words.say("boom.title"))
            .step(
                words.say("boom.step.flow"),
                words.say("boom.formula.flow"),
                words.exact(caught, measure) + " × 60 / " + seconds,
                words.show(caught.times(60.0 / seconds), measure)
                    + " / min = "
                    + words.show(found, units.flow()));
    return new SolvedPart(
        MeasuredAnswer.of(found, units.flow()), working, flowSlips(caught, seconds, units));
  }

  /** Slips with a catch of some seconds. */
  static List<TypicalSlip> flowSlips(Volume caught, int seconds, CalibrationUnits units) {
    return List.of(
        new TypicalSlip(
            CalibrationMistake.CATCH_TIME_AS_MINUTE,
            MeasuredAnswer.of(caught.dividedBy(new WorkTime(60)), units.flow())),
        new TypicalSlip(
            CalibrationMistake.PER_SECOND_AS_PER_MINUTE,
            MeasuredAnswer.of(
                caught.dividedBy(new WorkTime(60)).dividedBy(seconds), units.flow())));
  }

  private static SolvedPart volume(FlowRate nozzle, Boom boom, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var words = context.words().in(BoomVolume.class, "calibration");
    var layout = SprayLayout.boom(boom.nozzles(), boom.spacing());
    var found =
        SprayCalibration.ofNozzle(layout, new NozzleFlow(nozzle), boom.speed())
            .evaluate()
            .perFieldArea()
            .perArea();
    var width = boom.spacing().times(boom.nozzles());
    var all = nozzle.times(boom.nozzles());
    var working =
        Working.of(words.say("boom.title"))
            .step(
                words.say("boom.step.all"),
                "",
                boom.nozzles() + " × " + words.show(nozzle, units.flow()),
                words.show(all, units.flow()))
            .step(
                words.say("boom.step.width"),
                "",
                boom.nozzles() + " × " + words.exact(boom.spacing(), units.spacing()),
                words.show(width, units.spacing()))
            .step(
                words.say("boom.step.volume"),
                words.say(
                    "equation.volume",
                    "constant",
                    words.number(units.constant(units.spacing())),
                    "flow",
                    units.flow().symbol(),
                    "speed",
                    context.units().speed().symbol(),
                    "width",
                    units.spacing().symbol()),
                words.number(units.constant(units.spacing()))
                    + " × "
                    + words.number(all.in(units.flow()))
                    + " / ("
                    + words.exact(boom.speed().in(context.units().speed()))
                    + " × "
                    + words.number(width.in(units.spacing()))
                    + ")",
                words.show(found, units.volume()));
    return new SolvedPart(
        MeasuredAnswer.of(found, units.volume()), working, volumeSlips(found, boom, units));
  }

  private static List<TypicalSlip> volumeSlips(
      VolumePerArea right, Boom boom, CalibrationUnits units) {
    return List.of(
        slip(CalibrationMistake.ONE_NOZZLE_FOR_ALL, right.dividedBy(boom.nozzles()), units),
        slip(CalibrationMistake.SPACING_FOR_WIDTH, right.times(boom.nozzles()), units),
        slip(
            CalibrationMistake.SPEED_PER_SECOND_IN_EQUATION,
            right.times(units.speedMixUp(boom.speed())),
            units));
  }

  static TypicalSlip slip(
      CalibrationMistake mistake, VolumePerArea volume, CalibrationUnits units) {
    return new TypicalSlip(mistake, MeasuredAnswer.of(volume, units.volume()));
  }
}
