package agro.course.topic.units;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.units.Temperature;
import agro.units.TemperatureDifference;
import java.util.EnumSet;
import java.util.Set;

/**
 * A temperature or a difference of temperatures from a handbook of another country.
 *
 * @param value number in the handbook
 * @param difference whether it is a difference
 * @param pest pest of the story
 * @param context for whom
 */
record HandbookTemperature(double value, boolean difference, String pest, CourseContext context) {

  static ExerciseType type() {
    return new DeclaredType(
        "units-temperature",
        CourseTopic.UNITS,
        EnumSet.of(Difficulty.BASIC),
        Set.of(
            UnitMistake.OFFSET_FORGOTTEN,
            UnitMistake.OFFSET_OUT_OF_ORDER,
            UnitMistake.OFFSET_IN_DIFFERENCE,
            UnitMistake.DEGREE_FACTOR_INVERTED,
            UnitMistake.DEGREE_FACTOR_FORGOTTEN),
        (draw, difficulty, context) -> draw(draw, context).body());
  }

  private static HandbookTemperature draw(ExerciseDraw draw, CourseContext context) {
    boolean difference = draw.whole(0, 1) == 1;
    boolean fahrenheit = new Degrees(context).handbookIsFahrenheit();
    double value;
    if (difference) {
      value = fahrenheit ? draw.step(1.5, 12, 0.1) : draw.step(0.8, 6.7, 0.1);
    } else {
      value = fahrenheit ? draw.step(39, 99, 0.5) : draw.step(4, 36, 0.1);
    }
    var pest = draw.oneOf(context.setting().pests());
    return new HandbookTemperature(value, difference, pest, context);
  }

  private CourseWords words() {
    return context.words().in(HandbookTemperature.class, "units");
  }

  private ExerciseBody body() {
    var words = words();
    var degrees = new Degrees(context);
    var story = difference ? "temperature.story.difference" : "temperature.story.value";
    var printed = words.exact(value) + " " + degrees.handbook().symbol();
    return ExerciseBody.titled(words.say("temperature.title"))
        .story(words.say(story, "value", printed, "pest", pest))
        .givens(
            Givens.none()
                .withNumber("value", value)
                .withText("kind", difference ? "difference" : "temperature"))
        .part(
            words.say(
                difference ? "temperature.question.difference" : "temperature.question.value",
                "unit",
                degrees.ours().symbol()),
            earlier -> difference ? solveDifference() : solveValue())
        .build();
  }

  private SolvedPart solveValue() {
    var words = words();
    var degrees = new Degrees(context);
    return degrees.temperature(
        SolutionDraft.titled(words, words.say("temperature.title")),
        words,
        Temperature.of(value, degrees.handbook()));
  }

  private SolvedPart solveDifference() {
    var words = words();
    var degrees = new Degrees(context);
    return degrees.difference(
        SolutionDraft.titled(words, words.say("temperature.title")),
        words,
        TemperatureDifference.of(value, degrees.handbook()));
  }
}
