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
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Speed;
import agro.units.SpeedUnit;
import agro.units.Unit;
import agro.units.WorkTime;
import agro.units.WorkTimeUnit;
import java.util.EnumSet;
import java.util.Set;

/**
 * The speed of a sprayer from a timed course, and the time for a row at that speed.
 *
 * @param course measured course
 * @param time time for it
 * @param row length of a row
 * @param onwards whether the time for the row is asked for
 * @param context for whom
 */
record TimedSpeed(
    Length course, WorkTime time, Length row, boolean onwards, CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "units-speed",
        CourseTopic.UNITS,
        EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE),
        Set.of(
            UnitMistake.SPEED_NOT_CONVERTED,
            UnitMistake.SPEED_FACTOR_INVERTED,
            UnitMistake.SPEED_INVERTED,
            UnitMistake.TIME_MULTIPLIED,
            UnitMistake.TIME_WITH_RAW_SPEED),
        (draw, difficulty, context) ->
            draw(draw, difficulty == Difficulty.ROUTINE, context).body());
  }

  private static TimedSpeed draw(ExerciseDraw draw, boolean onwards, CourseContext context) {
    boolean feet = context.units().course() == LengthUnit.FOOT;
    double length = feet ? draw.step(60, 300, 20) : draw.step(20, 100, 10);
    var course = Length.of(length, context.units().course());
    double metresPerSecond = draw.step(0.7, 2.4, 0.05);
    double seconds = StrictMath.rint(10 * course.metres() / metresPerSecond) / 10;
    double row = feet ? draw.step(350, 1200, 50) : draw.step(110, 380, 10);
    return new TimedSpeed(
        course, new WorkTime(seconds), Length.of(row, context.units().course()), onwards, context);
  }

  private CourseWords words() {
    return context.words().in(TimedSpeed.class, "units");
  }

  private Unit<Length> length() {
    return context.units().course();
  }

  private Unit<Speed> speed() {
    return context.units().speed();
  }

  private Unit<Speed> perSecond() {
    return length() == LengthUnit.FOOT ? SpeedUnit.FOOT_PER_SECOND : SpeedUnit.METRE_PER_SECOND;
  }

  private ExerciseBody body() {
    var words = words();
    var body =
        ExerciseBody.titled(words.say("speed.title"))
            .story(
                words.say(
                    "speed.story",
                    "course",
                    words.exact(course, length()),
                    "time",
                    words.exact(time, WorkTimeUnit.SECOND)))
            .story(Factors.say(words, UnitSizes.in(words).and(perSecond(), speed())))
            .givens(
                Givens.none()
                    .withQuantity("course", course)
                    .withQuantity("time", time)
                    .withQuantity("row", row))
            .part(words.say("speed.a", "unit", speed().symbol()), earlier -> solveSpeed());
    if (onwards) {
      body.story(words.say("speed.row", "row", words.exact(row, length())))
          .part(words.say("speed.b"), this::solveTime);
    }
    return body.build();
  }

  private SolvedPart solveSpeed() {
    var words = words();
    var right = course.dividedBy(time);
    double raw = right.in(perSecond());
    double factor = perSecond().toBase(1) / speed().toBase(1);
    return SolutionDraft.titled(words, words.say("speed.title"))
        .step(
            "speed.raw",
            words.exact(course, length()) + " ÷ " + words.exact(time, WorkTimeUnit.SECOND),
            words.show(right, perSecond()))
        .step(
            "speed.a",
            words.show(right, perSecond())
                + (factor > 1 ? " × " + words.number(factor) : " ÷ " + words.number(1 / factor)),
            words.show(right, speed()))
        .slip(UnitMistake.SPEED_NOT_CONVERTED, speed(raw))
        .slip(
            UnitMistake.SPEED_FACTOR_INVERTED,
            speed(raw * speed().toBase(1) / perSecond().toBase(1)))
        .slip(UnitMistake.SPEED_INVERTED, speed(right.in(speed()) / raw / raw))
        .answer(speed(right.in(speed())));
  }

  private MeasuredAnswer<Speed> speed(double number) {
    return MeasuredAnswer.of(Speed.of(number, speed()), speed());
  }

  private SolvedPart solveTime(EarlierAnswers earlier) {
    var words = words();
    var driven = earlier.quantity(0, Speed.class);
    double perSecond = driven.in(perSecond());
    double right = row.metres() / driven.metresPerSecond();
    return SolutionDraft.titled(words, words.say("speed.title"))
        .step(
            "speed.b",
            words.exact(row, length()) + " ÷ " + words.show(driven, perSecond()),
            words.number(right) + " s")
        .slip(UnitMistake.TIME_MULTIPLIED, seconds(row.in(length()) * perSecond))
        .slip(UnitMistake.TIME_WITH_RAW_SPEED, seconds(row.in(length()) / driven.in(speed())))
        .answer(seconds(right));
  }

  private static MeasuredAnswer<WorkTime> seconds(double number) {
    return MeasuredAnswer.of(new WorkTime(number), WorkTimeUnit.SECOND);
  }
}
