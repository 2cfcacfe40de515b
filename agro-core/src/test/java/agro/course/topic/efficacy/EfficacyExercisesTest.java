package agro.course.topic.efficacy;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.Difficulty;
import agro.course.Exercise;
import agro.course.ExerciseContract;
import agro.course.ExerciseContract.OtherRoute;
import agro.course.ExerciseType;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EfficacyExercisesTest {

  private static final Map<String, OtherRoute> ROUTES =
      Map.of(
          "efficacy-survivors", EfficacyExercisesTest::survivors,
          "efficacy-formula", EfficacyExercisesTest::formula,
          "efficacy-dead", EfficacyExercisesTest::dead,
          "efficacy-before-after", EfficacyExercisesTest::beforeAfter,
          "efficacy-change", EfficacyExercisesTest::change,
          "efficacy-blocks", EfficacyExercisesTest::blocks);

  static Stream<ExerciseType> types() {
    return EfficacyExercises.first().stream();
  }

  @ParameterizedTest
  @MethodSource("types")
  void everyTypeKeepsTheContract(ExerciseType type) {
    ExerciseContract.holds(type, ROUTES.get(type.code()));
    assertThat(ExerciseContract.mistakesMet(type)).isEqualTo(type.mistakes());
  }

  @Tag("slow")
  @ParameterizedTest
  @MethodSource("types")
  void everyTypeKeepsTheContractOverAThousandSeeds(ExerciseType type) {
    ExerciseContract.holdsForAThousand(type, ROUTES.get(type.code()));
  }

  @Test
  void everyMistakeBelongsToAType() {
    var named = new HashSet<>();
    types().forEach(type -> named.addAll(type.mistakes()));
    assertThat(named).isEqualTo(EnumSet.allOf(EfficacyMistake.class));
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    ExerciseContract.sameKeys(EfficacyExercises.class, "efficacy");
  }

  /** Of a hundred on the control, so many are gone from the treated. */
  private static List<Object> survivors(Exercise exercise) {
    double perHundred = 100 / exercise.givens().number("control");
    return List.of(100 - exercise.givens().number("treated") * perHundred);
  }

  private static List<Object> formula(Exercise exercise) {
    return List.of(
        Map.of(
                "survivors", "abbott",
                "dead", "schneider_orelli",
                "counts", "henderson_tilton")
            .get(exercise.givens().text("trial")));
  }

  /** The chance to die of the treatment, of those that would not have died anyway. */
  private static List<Object> dead(Exercise exercise) {
    var given = exercise.givens();
    double alive = 1 - given.number("treatedDead") / given.number("treatedTotal");
    double aliveAnyway = 1 - given.number("controlDead") / given.number("controlTotal");
    return List.of(100 - 100 * alive, 100 - 100 * aliveAnyway, 100 - 100 * alive / aliveAnyway);
  }

  /** What would live on the treated plot had it changed as the control did. */
  private static List<Object> beforeAfter(Exercise exercise) {
    var given = exercise.givens();
    double grown = given.number("controlAfter") / given.number("controlBefore");
    double expected = given.number("treatedBefore") * grown;
    return List.of(
        given.number("treatedAfter") / given.number("treatedBefore"),
        grown,
        100 * (expected - given.number("treatedAfter")) / expected);
  }

  private static List<Object> change(Exercise exercise) {
    var given = exercise.givens();
    double grown = given.number("controlAfter") / given.number("controlBefore");
    double expected = given.number("treatedBefore") * grown;
    return List.of(
        100 - 100 * given.number("treatedAfter") / given.number("treatedBefore"),
        100 * grown - 100,
        100 * (expected - given.number("treatedAfter")) / expected);
  }

  /** Efficacy from sums in place of means. */
  private static List<Object> blocks(Exercise exercise) {
    double control = 0;
    double treated = 0;
    for (int i = 0; i < exercise.givens().numbers("control").size(); i++) {
      control += exercise.givens().numbers("control").get(i);
      treated += exercise.givens().numbers("treated").get(i);
    }
    var answers =
        new ArrayList<Object>(
            List.of(control / 4, treated / 4, 100 * (control - treated) / control));
    if (exercise.key().difficulty() == Difficulty.DEMANDING) {
      answers.add(100 - 25 * leftOfEach(exercise));
    }
    return answers;
  }

  /** What is left in the four blocks, as parts of one, added up. */
  private static double leftOfEach(Exercise exercise) {
    double left = 0;
    for (int i = 0; i < 4; i++) {
      left +=
          exercise.givens().numbers("treated").get(i) / exercise.givens().numbers("control").get(i);
    }
    return left;
  }
}
