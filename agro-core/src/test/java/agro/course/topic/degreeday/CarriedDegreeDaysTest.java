package agro.course.topic.degreeday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.course.AnswerValue;
import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.DayAnswer;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.Exercise;
import agro.course.ExerciseKey;
import agro.course.ExerciseType;
import agro.course.GeneratorVersion;
import agro.course.NumberAnswer;
import agro.course.TemperatureAnswer;
import agro.course.ThermalTimeAnswer;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.working.TextLanguage;
import org.junit.jupiter.api.Test;

/** A student's own earlier answer goes into the later parts. */
class CarriedDegreeDaysTest {

  private static Exercise exercise(ExerciseType type, Difficulty difficulty) {
    var context =
        new CourseContext(
            CourseSetting.osmereVale(TextLanguage.ENGLISH).withUnits(CourseUnits.METRIC),
            CourseWords.of(TextLanguage.ENGLISH),
            false);
    return Exercise.set(
        type, new ExerciseKey(type.code(), difficulty, GeneratorVersion.FIRST, 11), context);
  }

  private static AnswerValue sum(double celsiusDays) {
    return new AnswerValue.OfThermalTime(ThermalTime.ofDegreeDaysC(celsiusDays));
  }

  private static double solvedSum(Exercise exercise, int part, AnswerValue... earlier) {
    return ((ThermalTimeAnswer) solve(exercise, part, earlier)).number();
  }

  private static Object solve(Exercise exercise, int part, AnswerValue... earlier) {
    var answers = EarlierAnswers.none();
    for (var one : earlier) {
      answers = answers.and(one);
    }
    return exercise.parts().get(part).solution().solve(answers).answer();
  }

  @Test
  void aWeekOfItsOwnIsCarriedOn() {
    var week = exercise(new WeekSum(), Difficulty.ROUTINE);
    double before = week.givens().number("before");
    double requirement = week.givens().number("requirement");
    assertThat(solvedSum(week, 1, sum(17))).isCloseTo(before + 17, within(1e-9));
    assertThat(solvedSum(week, 2, sum(17), sum(100))).isCloseTo(requirement - 100, within(1e-9));
  }

  @Test
  void aSumOfItsOwnReachesTheRequirementOnItsOwnDay() {
    var date = exercise(new SumReached(), Difficulty.ROUTINE);
    double requirement = date.givens().number("requirement");
    int asked = (int) date.givens().number("asked");
    var next = date.givens().day("first").plusDays(asked + 1L);
    assertThat(((DayAnswer) solve(date, 1, sum(requirement - 0.01))).day()).isEqualTo(next);
    assertThatThrownBy(() -> solve(date, 1, sum(requirement + 1)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> solve(date, 1, sum(-1e4)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aForecastGoesOnFromItsOwnRest() {
    var forecast = exercise(new ForecastDate(), Difficulty.DEMANDING);
    double daily =
        (forecast.givens().number("forecast min") + forecast.givens().number("forecast max")) / 2
            - forecast.givens().number("lower");
    var days = (NumberAnswer) solve(forecast, 2, sum(1), sum(3.5 * daily));
    assertThat(days.number()).isCloseTo(3.5, within(1e-9));
    var today =
        forecast.givens().day("first").plusDays(forecast.givens().numbers("min").size() - 1L);
    var day = (DayAnswer) solve(forecast, 3, sum(1), sum(2), new AnswerValue.OfNumber(6.2));
    assertThat(day.day()).isEqualTo(today.plusDays(7));
    assertThatThrownBy(() -> solve(forecast, 3, sum(1), sum(2), new AnswerValue.OfNumber(-6)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theSineTakesItsOwnArgument() {
    var sine = exercise(new SineDay(), Difficulty.ROUTINE);
    double half = (sine.givens().number("max") - sine.givens().number("min")) / 2;
    // A threshold at the mean: half the day is warm, A / π.
    assertThat(solvedSum(sine, 1, new AnswerValue.OfNumber(0)))
        .isCloseTo(half / Math.PI, within(1e-9));
    assertThat(solvedSum(sine, 1, new AnswerValue.OfNumber(-2))).isCloseTo(2 * half, within(1e-9));
    assertThat(solvedSum(sine, 1, new AnswerValue.OfNumber(1.5))).isZero();
  }

  @Test
  void aHotDayTakesItsOwnAreas() {
    var hot = exercise(new HotDay(), Difficulty.DEMANDING);
    double own = solvedSum(hot, 2, sum(20), sum(1));
    double lower = hot.givens().number("lower");
    double upper = hot.givens().number("upper");
    double mean = (hot.givens().number("max") + hot.givens().number("min")) / 2;
    double half = hot.givens().number("max") - mean;
    double share = Math.acos((upper - mean) / half) / Math.PI;
    double expected =
        switch (hot.givens().text("rule")) {
          case "HORIZONTAL" -> 19;
          case "INTERMEDIATE" -> 18;
          default -> 19 - (upper - lower) * share;
        };
    assertThat(own).isCloseTo(expected, within(1e-9));
  }

  @Test
  void aThresholdAndARequirementOfItsOwnGiveItsOwnDays() {
    var units = exercise(new OtherUnits(), Difficulty.ROUTINE);
    var lower = new AnswerValue.OfTemperature(Temperature.ofCelsius(5));
    var days = (NumberAnswer) solve(units, 2, sum(300), lower);
    assertThat(days.number()).isCloseTo(300 / (units.givens().number("at") - 5), within(1e-9));
    var tooWarm = new AnswerValue.OfTemperature(Temperature.ofCelsius(60));
    assertThatThrownBy(() -> solve(units, 2, sum(300), tooWarm))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void anOffsetOfItsOwnGoesOnIntoTheSeason() {
    var offset = exercise(new StationOffset(), Difficulty.ROUTINE);
    double lower = offset.givens().number("lower");
    var mean = new AnswerValue.OfTemperature(Temperature.ofCelsius(lower + 4));
    assertThat(solvedSum(offset, 1, mean)).isCloseTo(4, within(1e-9));
    double station = (offset.givens().number("min") + offset.givens().number("max")) / 2 - lower;
    assertThat(solvedSum(offset, 2, mean, sum(4)))
        .isCloseTo(offset.givens().number("days") * (4 - station), within(1e-9));
    assertThat(((TemperatureAnswer) offset.solution().get(0).answer()).number())
        .isCloseTo(station + lower + offset.givens().number("offset"), within(1e-9));
  }
}
