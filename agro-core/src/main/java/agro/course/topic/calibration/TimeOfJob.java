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
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.dose.SprayVolume;
import agro.dose.sprayer.PumpJob;
import agro.source.Reference;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.FlowRate;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.WorkTime;
import agro.units.WorkTimeUnit;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The time that a field takes with a sprayer that is carried. */
final class TimeOfJob implements ExerciseType {

  private record Job(
      Area field, VolumePerArea volume, Volume tank, FlowRate flow, WorkTime filling) {
    double tanks() {
      return new SprayVolume(volume).on(field).ratioTo(tank);
    }

    PumpJob of(WorkTime perTank) {
      return PumpJob.of(field, new SprayVolume(volume), tank, perTank).filling(filling);
    }
  }

  @Override
  public String code() {
    return "calibration-time";
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
        CalibrationMistake.ROUNDED_DOWN,
        CalibrationMistake.AREA_FORGOTTEN,
        CalibrationMistake.TANK_TIMES_FLOW,
        CalibrationMistake.FLOW_OVER_TANK,
        CalibrationMistake.FILLING_FORGOTTEN,
        CalibrationMistake.LAST_TANK_AS_FULL,
        CalibrationMistake.ONE_FILLING);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var water = context.units().water();
    var land = context.units().land();
    var job =
        new Job(
            draw.sensible(Area.of(0.15, AreaUnit.HECTARE), Area.of(0.8, AreaUnit.HECTARE), land, 2),
            draw.sensible(new VolumePerArea(150), new VolumePerArea(450), units.volume(), 2),
            Volume.of(
                units.gallons() ? draw.whole(3, 5) : draw.oneOf(List.of(10, 12, 15, 16, 20)),
                water),
            draw.sensible(new FlowRate(0.8), new FlowRate(2), units.flow(), 2),
            WorkTime.of(draw.step(3, 8, 0.5), WorkTimeUnit.MINUTE));
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(TimeOfJob.class, "calibration");
    return ExerciseBody.titled(words.say("time.title"))
        .story(
            words.say(
                "time.story",
                "field",
                field,
                "area",
                words.exact(job.field(), land),
                "volume",
                words.exact(job.volume(), units.volume()),
                "tank",
                words.exact(job.tank(), water),
                "flow",
                words.exact(job.flow(), units.flow()),
                "filling",
                words.exact(job.filling(), WorkTimeUnit.MINUTE)))
        .givens(
            Givens.none()
                .withQuantity("area", job.field())
                .withQuantity("volume", job.volume())
                .withQuantity("tank", job.tank())
                .withQuantity("flow", job.flow())
                .withQuantity("filling", job.filling()))
        .part(words.say("time.question.fillings"), earlier -> fillings(job, context))
        .part(words.say("time.question.tank"), earlier -> tank(job, context))
        .part(
            words.say("time.question.job"),
            2,
            earlier -> job(job, earlier.number(0), earlier.quantity(1, WorkTime.class), context))
        .source(
            Reference.commonPractice(
                "The time of a job is the number of tank loads times the minutes for each"))
        .build();
  }

  private static SolvedPart fillings(Job job, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var water = context.units().water();
    var words = context.words().in(TimeOfJob.class, "calibration");
    var spray = new SprayVolume(job.volume()).on(job.field());
    int found = job.of(new WorkTime(60)).evaluate().fills();
    var one = Area.of(1, context.units().land());
    var slips =
        List.of(
            new TypicalSlip(
                CalibrationMistake.ROUNDED_DOWN,
                NumberAnswer.whole((long) Math.floor(job.tanks() + 1e-9))),
            new TypicalSlip(
                CalibrationMistake.AREA_FORGOTTEN,
                NumberAnswer.whole(
                    (long)
                        Math.ceil(
                            new SprayVolume(job.volume()).on(one).ratioTo(job.tank()) - 1e-9))));
    var working =
        Working.of(words.say("time.title"))
            .step(
                words.say("time.step.spray"),
                words.say("time.formula.spray"),
                words.exact(job.volume(), units.volume())
                    + " × "
                    + words.exact(job.field(), context.units().land()),
                words.show(spray, water))
            .step(
                words.say("time.step.tanks"),
                words.say("time.formula.tanks"),
                words.show(spray, water) + " / " + words.exact(job.tank(), water),
                words.number(job.tanks()))
            .step(words.say("time.step.fillings"), "", "", String.valueOf(found));
    return new SolvedPart(NumberAnswer.whole(found), working, slips);
  }

  private static SolvedPart tank(Job job, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var water = context.units().water();
    var words = context.words().in(TimeOfJob.class, "calibration");
    double minutes = job.tank().in(water) / job.flow().in(units.flow());
    var slips =
        List.of(
            minutes(
                CalibrationMistake.TANK_TIMES_FLOW,
                job.tank().in(water) * job.flow().in(units.flow())),
            minutes(CalibrationMistake.FLOW_OVER_TANK, 1 / minutes));
    var found = WorkTime.of(minutes, WorkTimeUnit.MINUTE);
    var working =
        Working.of(words.say("time.title"))
            .step(
                words.say("time.step.tank"),
                words.say("time.formula.tank"),
                words.exact(job.tank(), water) + " / " + words.exact(job.flow(), units.flow()),
                words.show(found, WorkTimeUnit.MINUTE));
    return new SolvedPart(MeasuredAnswer.of(found, WorkTimeUnit.MINUTE), working, slips);
  }

  private static SolvedPart job(Job job, double fillings, WorkTime perTank, CourseContext context) {
    var words = context.words().in(TimeOfJob.class, "calibration");
    var minute = WorkTimeUnit.MINUTE;
    var planned = job.of(perTank).evaluate();
    var spraying = perTank.times(job.tanks());
    var filling = job.filling().times(fillings);
    // The adviser's time, but with as many fillings as the student found.
    var found =
        planned
            .labour()
            .plus(job.filling().times(fillings))
            .minus(job.filling().times(planned.fills()));
    var slips =
        List.of(
            minutes(CalibrationMistake.FILLING_FORGOTTEN, spraying.in(minute)),
            minutes(
                CalibrationMistake.LAST_TANK_AS_FULL,
                perTank.times(fillings).plus(filling).in(minute)),
            minutes(CalibrationMistake.ONE_FILLING, spraying.plus(job.filling()).in(minute)));
    var working =
        Working.of(words.say("time.title"))
            .step(
                words.say("time.step.spraying"),
                words.say("time.formula.spraying"),
                words.number(job.tanks()) + " × " + words.show(perTank, minute),
                words.show(spraying, minute))
            .step(
                words.say("time.step.filling"),
                words.say("time.formula.filling"),
                words.exact(fillings) + " × " + words.exact(job.filling(), minute),
                words.show(filling, minute))
            .step(
                words.say("time.step.job"),
                "",
                words.show(spraying, minute) + " + " + words.show(filling, minute),
                words.show(found, minute));
    return new SolvedPart(MeasuredAnswer.of(found, minute), working, slips);
  }

  private static TypicalSlip minutes(CalibrationMistake mistake, double minutes) {
    var time = WorkTime.of(minutes, WorkTimeUnit.MINUTE);
    return new TypicalSlip(mistake, MeasuredAnswer.of(time, WorkTimeUnit.MINUTE));
  }
}
