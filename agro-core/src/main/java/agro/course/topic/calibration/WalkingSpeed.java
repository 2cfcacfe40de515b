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
import agro.course.UnitSizes;
import agro.dose.sprayer.TimedCourse;
import agro.units.Length;
import agro.units.Speed;
import agro.units.WorkTime;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.Set;

/** The speed from a timed course. */
final class WalkingSpeed implements ExerciseType {

  private static final int MINUTE = 60;
  private static final double SLOWEST = 0.7;
  private static final double FASTEST = 1.4;

  @Override
  public String code() {
    return "calibration-speed";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.CALIBRATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        CalibrationMistake.PER_SECOND_AS_PER_HOUR,
        CalibrationMistake.TIME_OVER_LENGTH,
        CalibrationMistake.SECONDS_AS_DECIMALS);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var units = new CalibrationUnits(context.units());
    var unit = context.units().course();
    var speed = context.units().speed();
    var course = Length.of(units.feet() ? draw.step(150, 350, 10) : draw.step(50, 120, 5), unit);
    int seconds =
        draw.whole((int) Math.ceil(course.metres() / FASTEST), (int) (course.metres() / SLOWEST));
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(WalkingSpeed.class, "calibration");
    var time =
        seconds < MINUTE ? seconds + " s" : seconds / MINUTE + " min " + seconds % MINUTE + " s";
    return ExerciseBody.titled(words.say("speed.title"))
        .story(
            words.say(
                "speed.story", "field", field, "course", words.exact(course, unit), "time", time))
        .story(CalibrationUnits.given(words, UnitSizes.in(words).and(units.perSecond(), speed)))
        .givens(Givens.none().withQuantity("course", course).withNumber("seconds", seconds))
        .part(
            words.say("speed.question", "unit", speed.symbol()),
            earlier -> solve(course, seconds, context))
        .build();
  }

  private static SolvedPart solve(Length course, int seconds, CourseContext context) {
    var units = context.units();
    var words = context.words().in(WalkingSpeed.class, "calibration");
    var found = TimedCourse.of(course, new WorkTime(seconds)).evaluate().speed();
    double length = course.in(units.course());
    double perSecond = length / seconds;
    double factor = found.in(units.speed()) / perSecond;
    var slips = new ArrayList<TypicalSlip>();
    slips.add(slip(CalibrationMistake.PER_SECOND_AS_PER_HOUR, perSecond, context));
    slips.add(slip(CalibrationMistake.TIME_OVER_LENGTH, factor * seconds / length, context));
    if (seconds > MINUTE && seconds % MINUTE > 0) {
      double read = MINUTE * (Math.floorDiv(seconds, MINUTE) + seconds % MINUTE / 100.0);
      slips.add(slip(CalibrationMistake.SECONDS_AS_DECIMALS, factor * length / read, context));
    }
    var perSecondUnit = new CalibrationUnits(units).perSecond();
    var working =
        Working.of(words.say("speed.title"))
            .step(
                words.say("speed.step.second"),
                words.say("speed.formula"),
                words.exact(course, units.course()) + " / " + seconds + " s",
                words.show(found, perSecondUnit))
            .step(
                words.say("speed.step.hour"),
                "",
                words.show(found, perSecondUnit)
                    + (factor > 1
                        ? " × " + words.number(factor)
                        : " ÷ " + words.number(1 / factor)),
                words.show(found, units.speed()));
    return new SolvedPart(MeasuredAnswer.of(found, units.speed()), working, slips);
  }

  private static TypicalSlip slip(CalibrationMistake mistake, double speed, CourseContext context) {
    var unit = context.units().speed();
    return new TypicalSlip(mistake, MeasuredAnswer.of(Speed.of(speed, unit), unit));
  }
}
