package agro.course.topic.development;

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
import agro.course.PercentAnswer;
import agro.course.TemperatureAnswer;
import agro.course.ThermalTimeAnswer;
import agro.development.rate.LineMethod;
import agro.development.rate.RearingData;
import agro.development.rate.ThermalLine;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.working.TextLanguage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A student's own earlier answer goes into the later parts; published values are the printed. */
class CarriedDevelopmentTest {

  private static Exercise exercise(ExerciseType type, Difficulty difficulty, long seed) {
    var context =
        new CourseContext(
            CourseSetting.osmereVale(TextLanguage.ENGLISH).withUnits(CourseUnits.METRIC),
            CourseWords.of(TextLanguage.ENGLISH),
            false);
    return Exercise.set(
        type, new ExerciseKey(type.code(), difficulty, GeneratorVersion.FIRST, seed), context);
  }

  private static Object solve(Exercise exercise, int part, AnswerValue... earlier) {
    return exercise
        .parts()
        .get(part)
        .solution()
        .solve(new EarlierAnswers(List.of(earlier)))
        .answer();
  }

  private static AnswerValue sum(double celsiusDays) {
    return new AnswerValue.OfThermalTime(ThermalTime.ofDegreeDaysC(celsiusDays));
  }

  private static AnswerValue celsius(double celsius) {
    return new AnswerValue.OfTemperature(Temperature.ofCelsius(celsius));
  }

  private static AnswerValue number(double number) {
    return new AnswerValue.OfNumber(number);
  }

  @Test
  void thresholdAndRequirementOfItsOwnGiveItsOwnDays() {
    for (var type : List.of(new RateLine(), new TwoTemperatures())) {
      var exercise = exercise(type, Difficulty.ROUTINE, 7);
      double at = exercise.givens().number("at");
      var days = (NumberAnswer) solve(exercise, 2, celsius(4), sum(300));
      assertThat(days.number()).as(type.code()).isCloseTo(300 / (at - 4), within(1e-9));
      assertThatThrownBy(() -> solve(exercise, 2, celsius(at), sum(300)))
          .isInstanceOf(IllegalArgumentException.class);
    }
    var two = exercise(new TwoTemperatures(), Difficulty.ROUTINE, 7);
    assertThat(((ThermalTimeAnswer) solve(two, 1, celsius(4))).number())
        .isCloseTo(
            two.givens().number("cool days") * (two.givens().number("cool") - 4), within(1e-9));
  }

  @Test
  void aShareOfItsOwnLeavesItsOwnRest() {
    var mixed = exercise(new MixedTemperatures(), Difficulty.ROUTINE, 7);
    double last = mixed.givens().numbers("durations").get(2);
    assertThat(((NumberAnswer) solve(mixed, 1, number(25))).number())
        .isCloseTo(0.75 * last, within(1e-9));
    long before = (long) (mixed.givens().number("cool") + mixed.givens().number("mild"));
    assertThat(((DayAnswer) solve(mixed, 2, number(25), number(3.2))).day())
        .isEqualTo(mixed.givens().day("start").plusDays(before + 4));
    assertThatThrownBy(() -> solve(mixed, 1, number(120)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void daysOfItsOwnGiveItsOwnShares() {
    var stages = exercise(new StageShares(), Difficulty.ROUTINE, 7);
    assertThat(((PercentAnswer) solve(stages, 2, number(5), number(20))).percent())
        .isCloseTo(25, within(1e-12));
    assertThatThrownBy(() -> solve(stages, 2, number(20), number(5)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aSeasonOfItsOwnGivesItsOwnGenerations() {
    var season = exercise(new SeasonGenerations(), Difficulty.ROUTINE, 7);
    double generation =
        season.givens().number("egg to adult") + season.givens().number("before eggs");
    double twice = season.givens().number("first flight") + 2 * generation;
    assertThat(((NumberAnswer) solve(season, 1, sum(twice))).number()).isCloseTo(2, within(1e-12));
    assertThat(((PercentAnswer) solve(season, 2, sum(twice), number(2.25))).percent())
        .isCloseTo(25, within(1e-9));
  }

  @Test
  void aSlopeOfItsOwnTurnsTheLineAboutTheMeans() {
    var squares = exercise(new LeastSquaresLine(), Difficulty.DEMANDING, 7);
    double mean =
        squares.givens().numbers("temperatures").stream()
            .mapToDouble(Double::doubleValue)
            .average()
            .orElseThrow();
    double rate =
        squares.givens().numbers("days").stream()
            .mapToDouble(days -> 1 / days)
            .average()
            .orElseThrow();
    assertThat(((TemperatureAnswer) solve(squares, 1, number(0.004))).number())
        .isCloseTo(mean - rate / 0.004, within(1e-9));
    assertThat(((ThermalTimeAnswer) solve(squares, 2, number(0.004), celsius(8))).number())
        .isCloseTo(250, within(1e-9));
    assertThatThrownBy(() -> solve(squares, 1, number(-0.004)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** The adviser's own line has the deviation that is printed with three digits in the exercise. */
  @Test
  void theStandardErrorIsThatOfTheLibrarysLine() {
    for (long seed = 0; seed < 20; seed++) {
      var squares = exercise(new LeastSquaresLine(), Difficulty.DEMANDING, seed);
      var line =
          ThermalLine.of(
              RearingData.ofMeans(
                  "invented",
                  array(squares.givens().numbers("temperatures")),
                  array(squares.givens().numbers("days"))),
              LineMethod.LEAST_SQUARES);
      var solution = squares.solution();
      assertThat(((TemperatureAnswer) solution.get(1).answer()).number())
          .isCloseTo(line.lowerCelsius(), within(1e-9));
      assertThat(((ThermalTimeAnswer) solution.get(2).answer()).number())
          .isCloseTo(line.degreeDaysC(), within(1e-7));
      double error = ((NumberAnswer) solution.get(3).answer()).number();
      assertThat(error).isCloseTo(line.lowerStandardError(), within(0.006 * error));
    }
  }

  private static double[] array(List<Double> numbers) {
    return numbers.stream().mapToDouble(Double::doubleValue).toArray();
  }

  @Test
  void aWrongPointOfItsOwnIsLeftOutOfTheLine() {
    var optimum = exercise(new PastOptimum(), Difficulty.DEMANDING, 7);
    var at = optimum.givens().numbers("temperatures");
    var days = optimum.givens().numbers("days");
    var own = (NumberAnswer) solve(optimum, 1, new AnswerValue.OfChoice("t1"));
    double mean = (at.get(1) + at.get(2) + at.get(3)) / 3;
    double products = 0;
    double squares = 0;
    for (int i = 1; i < 4; i++) {
      products += (at.get(i) - mean) / days.get(i);
      squares += (at.get(i) - mean) * (at.get(i) - mean);
    }
    assertThat(own.number()).isCloseTo(products / squares, within(1e-12));
  }

  @Test
  void anotherSpanHasItsOwnRequirement() {
    var flight = exercise(new NextFlight(), Difficulty.DEMANDING, 7);
    double egg = flight.givens().number("egg");
    double grown = flight.givens().number("larva and pupa");
    var adult = new AnswerValue.OfChoice("egg-to-adult");
    assertThat(((ThermalTimeAnswer) solve(flight, 1, adult)).number())
        .isCloseTo(egg + grown, within(1e-9));
    var pupa = new AnswerValue.OfChoice("larva-and-pupa");
    assertThat(((ThermalTimeAnswer) solve(flight, 1, pupa)).number())
        .isCloseTo(grown, within(1e-9));
    double above = flight.givens().number("mean") - flight.givens().number("lower");
    assertThat(((NumberAnswer) solve(flight, 2, adult, sum(100))).number())
        .isCloseTo(100 / above, within(1e-9));
  }

  /** Threshold and requirement as the works print them (Mason 2010, Golizadeh 2007, ...). */
  @Test
  void publishedFiguresAreThoseOfTheWorks() {
    var printed =
        Map.of(
            "Acrolepiopsis assectella ", List.of(7.0, 444.6),
            "Plutella xylostella cauliflower", List.of(7.06, 263.74),
            "Plutella xylostella cabbage", List.of(7.84, 261.58),
            "Helicoverpa armigera ", List.of(11.5, 625.0),
            "Bemisia tabaci soybean", List.of(8.3, 472.6),
            "Tetranychus urticae ", List.of(12.5, 146.48),
            "Aphis gossypii cotton", List.of(6.2, 108.9));
    var met = new HashMap<String, List<Double>>();
    for (long seed = 0; seed < 100; seed++) {
      var givens = exercise(new ConstantDays(), Difficulty.BASIC, seed).givens();
      met.put(
          givens.text("species"), List.of(givens.number("lower"), givens.number("requirement")));
    }
    assertThat(met).isEqualTo(printed);
  }
}
