package agro.course.topic.units;

import agro.course.AnswerTolerance;
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
import agro.course.NumberAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.units.Temperature;
import agro.units.TemperatureDifference;
import agro.units.TemperatureUnit;
import agro.units.ThermalTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Threshold and requirement of a stage from a handbook of another country, used with temperatures
 * of the class: a temperature has an offset, a difference and a sum of degree-days have none.
 *
 * @param threshold threshold in the degrees of the handbook
 * @param sum requirement in the degree-days of the handbook
 * @param warmer how much warmer the station is than the field, in degrees of the handbook
 * @param mean mean at the station in degrees of the class
 * @param corrected whether the correction belongs to the exercise
 * @param pest pest of the story
 * @param context for whom
 */
record HandbookStage(
    double threshold,
    double sum,
    double warmer,
    double mean,
    boolean corrected,
    String pest,
    CourseContext context) {

  private static final double TENTH = 0.1;

  /** What days may depart by where the temperatures before them were rounded. */
  private static final double LARGEST_ROUNDING = 0.01;

  static ExerciseType type() {
    return new DeclaredType(
        "units-degree-days",
        CourseTopic.UNITS,
        EnumSet.of(Difficulty.ROUTINE, Difficulty.DEMANDING),
        Set.of(
            UnitMistake.OFFSET_FORGOTTEN,
            UnitMistake.OFFSET_OUT_OF_ORDER,
            UnitMistake.OFFSET_IN_DIFFERENCE,
            UnitMistake.OFFSET_IN_DEGREE_DAYS,
            UnitMistake.DEGREE_FACTOR_INVERTED,
            UnitMistake.DEGREE_FACTOR_FORGOTTEN,
            UnitMistake.THRESHOLD_NOT_SUBTRACTED,
            UnitMistake.CORRECTION_FORGOTTEN,
            UnitMistake.CORRECTION_WRONG_SIGN),
        (draw, difficulty, context) ->
            draw(draw, difficulty == Difficulty.DEMANDING, context).body());
  }

  private static HandbookStage draw(ExerciseDraw draw, boolean corrected, CourseContext context) {
    boolean fahrenheit = new Degrees(context).handbookIsFahrenheit();
    double threshold = fahrenheit ? draw.step(41, 53, 0.5) : draw.step(5, 12, 0.1);
    double warmer = fahrenheit ? draw.step(1.5, 5.5, 0.1) : draw.step(0.8, 3, 0.1);
    double mean =
        context.units().temperature() == TemperatureUnit.FAHRENHEIT
            ? draw.step(70, 80, 0.5)
            : draw.step(21, 27, 0.1);
    // A generation of two to five weeks at the station, whatever the threshold.
    double days = draw.step(14, 35, 0.5);
    double warmth = (fahrenheit ? mean * 9 / 5 + 32 : (mean - 32) * 5 / 9) - threshold;
    double fine = fahrenheit ? 5 : 1;
    double sum = StrictMath.rint(days * warmth / fine) * fine;
    var pest = draw.oneOf(context.setting().pests());
    return new HandbookStage(threshold, sum, warmer, mean, corrected, pest, context);
  }

  private CourseWords words() {
    return context.words().in(HandbookStage.class, "units");
  }

  private Degrees degrees() {
    return new Degrees(context);
  }

  private ExerciseBody body() {
    var words = words();
    var foreign = degrees().handbook().symbol();
    var own = degrees().ours().symbol();
    var body =
        ExerciseBody.titled(words.say("stage.title"))
            .story(
                words.say(
                    "stage.story",
                    "pest",
                    pest,
                    "threshold",
                    words.exact(threshold) + " " + foreign,
                    "sum",
                    words.exact(sum) + " " + degrees().handbookTime().symbol()))
            .story(
                words.say(
                    "stage.mean",
                    "place",
                    context.setting().place(),
                    "mean",
                    words.exact(mean) + " " + own));
    if (corrected) {
      body.story(words.say("stage.warmer", "warmer", words.exact(warmer) + " " + foreign));
    }
    body.givens(
            Givens.none()
                .withNumber("threshold", threshold)
                .withNumber("sum", sum)
                .withNumber("warmer", warmer)
                .withNumber("mean", mean))
        .part(words.say("stage.a", "unit", own), earlier -> solveThreshold())
        .part(words.say("stage.b", "unit", degrees().oursTime().symbol()), earlier -> solveSum());
    if (corrected) {
      body.part(words.say("stage.c", "unit", own), earlier -> solveWarmer());
    }
    return body.part(words.say(corrected ? "stage.d.field" : "stage.d.station"), this::solveDays)
        .build();
  }

  private SolutionDraft part() {
    return SolutionDraft.titled(words(), words().say("stage.title"));
  }

  private SolvedPart solveThreshold() {
    return degrees().temperature(part(), words(), Temperature.of(threshold, degrees().handbook()));
  }

  private SolvedPart solveSum() {
    return degrees().sum(part(), words(), ThermalTime.of(sum, degrees().handbookTime()));
  }

  private SolvedPart solveWarmer() {
    return degrees()
        .difference(part(), words(), TemperatureDifference.of(warmer, degrees().handbook()));
  }

  private SolvedPart solveDays(EarlierAnswers earlier) {
    var words = words();
    var unit = degrees().ours();
    var base = earlier.temperature(0);
    double needed = earlier.thermalTime(1).in(degrees().oursTime());
    double shift = corrected ? earlier.number(2) : 0;
    var station = Temperature.of(mean, unit);
    var field = station.plus(TemperatureDifference.of(-shift, unit));
    double above = field.minus(base).in(unit);
    var part = part();
    if (corrected) {
      part.step(
          "stage.field",
          words.exact(mean) + " − " + words.number(shift),
          words.number(field.in(unit)) + " " + unit.symbol());
    }
    part.step(
            "stage.days",
            words.number(needed)
                + " ÷ ("
                + words.number(field.in(unit))
                + " − "
                + words.number(base.in(unit))
                + ")",
            words.number(needed / above))
        .slip(UnitMistake.THRESHOLD_NOT_SUBTRACTED, days(needed / field.in(unit)));
    if (corrected) {
      double stationAbove = station.minus(base).in(unit);
      part.slip(UnitMistake.CORRECTION_FORGOTTEN, days(needed / stationAbove))
          .slip(UnitMistake.CORRECTION_WRONG_SIGN, days(needed / (stationAbove + shift)));
    }
    return part.answer(days(needed / above));
  }

  private NumberAnswer days(double number) {
    double width = Math.max(TENTH, LARGEST_ROUNDING * Math.abs(number));
    return new NumberAnswer(
        number,
        1,
        new AnswerTolerance(width, AnswerTolerance.Reason.DECIMALS),
        List.of(words().say("days"), "d"));
  }
}
