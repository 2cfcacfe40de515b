package agro.course.topic.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.course.AnswerValue;
import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.Exercise;
import agro.course.ExerciseContract;
import agro.course.ExerciseKey;
import agro.course.ExerciseType;
import agro.course.GeneratorVersion;
import agro.course.MeasuredAnswer;
import agro.course.NumberAnswer;
import agro.units.FlowRate;
import agro.units.LandUnit;
import agro.units.WorkTime;
import agro.working.TextLanguage;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CalibrationExercisesTest {

  static Stream<ExerciseType> types() {
    return CalibrationExercises.first().stream();
  }

  @ParameterizedTest
  @MethodSource("types")
  void everyTypeKeepsTheContract(ExerciseType type) {
    ExerciseContract.holds(type, CalibrationRoutes.ALL.get(type.code()));
    assertThat(ExerciseContract.mistakesMet(type)).isEqualTo(type.mistakes());
  }

  @Tag("slow")
  @ParameterizedTest
  @MethodSource("types")
  void everyTypeKeepsTheContractOverAThousandSeeds(ExerciseType type) {
    ExerciseContract.holdsForAThousand(type, CalibrationRoutes.ALL.get(type.code()));
  }

  @Test
  void everyMistakeBelongsToAType() {
    var named = new HashSet<>();
    types().forEach(type -> named.addAll(type.mistakes()));
    assertThat(named).isEqualTo(EnumSet.allOf(CalibrationMistake.class));
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    ExerciseContract.sameKeys(CalibrationExercises.class, "calibration");
  }

  @ParameterizedTest
  @MethodSource("types")
  void localLandUnitsAreSensibleToo(ExerciseType type) {
    var units = CourseUnits.METRIC.withLand(LandUnit.RAI);
    for (var difficulty : type.difficulties()) {
      for (int seed = 0; seed < 20; seed++) {
        var exercise = set(type, difficulty, seed, units);
        for (var part : exercise.solution()) {
          assertThat(part.slips()).isNotEmpty();
          if (part.answer() instanceof MeasuredAnswer<?> measured) {
            assertThat(measured.number()).isGreaterThan(0.05).isLessThan(20_000);
          }
        }
      }
    }
  }

  /** 600 L/min over 1 m at 1 km/h is 600 L/ha: a wrong flow goes on by the right method. */
  @Test
  void aWrongFlowIsCarriedForward() {
    var exercise = set(new BoomVolume(), Difficulty.ROUTINE, 3, CourseUnits.METRIC);
    var own = new FlowRate(2.5);
    var carried = carried(exercise, 1, new AnswerValue.OfQuantity(own));
    double metres = exercise.givens().base("spacing");
    double kilometresPerHour = 3.6 * exercise.givens().base("speed");
    assertThat(((MeasuredAnswer<?>) carried).number())
        .isCloseTo(600 * 2.5 / (kilometresPerHour * metres), within(1e-9));
  }

  @Test
  void wrongFillingsAreCarriedForward() {
    var exercise = set(new TimeOfJob(), Difficulty.ROUTINE, 5, CourseUnits.METRIC);
    var givens = exercise.givens();
    double tanks = givens.base("volume") * givens.base("area") / 10_000 / givens.base("tank");
    var carried =
        carried(
            exercise,
            2,
            new AnswerValue.OfNumber(40),
            new AnswerValue.OfQuantity(new WorkTime(600)));
    assertThat(((MeasuredAnswer<?>) carried).number())
        .isCloseTo(10 * tanks + 40 * givens.base("filling") / 60, within(1e-9));
  }

  @Test
  void fillingsAreWholeNumbers() {
    var answer = set(new TimeOfJob(), Difficulty.ROUTINE, 8, CourseUnits.US).solution().get(0);
    assertThat(((NumberAnswer) answer.answer()).number() % 1).isZero();
  }

  private static Object carried(Exercise exercise, int part, AnswerValue... earlier) {
    var answers = EarlierAnswers.none();
    for (var one : earlier) {
      answers = answers.and(one);
    }
    return exercise.parts().get(part).solution().solve(answers).answer();
  }

  private static Exercise set(
      ExerciseType type, Difficulty difficulty, long seed, CourseUnits units) {
    var words = CourseWords.of(TextLanguage.ENGLISH);
    var setting = CourseSetting.osmereVale(TextLanguage.ENGLISH).withUnits(units);
    var key = new ExerciseKey(type.code(), difficulty, GeneratorVersion.FIRST, seed);
    return Exercise.set(type, key, new CourseContext(setting, words, false));
  }
}
