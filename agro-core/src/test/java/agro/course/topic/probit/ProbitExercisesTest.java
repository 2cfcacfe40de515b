package agro.course.topic.probit;

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
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ProbitExercisesTest {

  /** The other route goes through the distribution of a general library. */
  private static final NormalDistribution PROBITS = new NormalDistribution(5, 1);

  private static final Map<String, OtherRoute> ROUTES =
      Map.of(
          "probit-transform", ProbitExercisesTest::transform,
          "probit-resistance", ProbitExercisesTest::resistance,
          "probit-line", ProbitExercisesTest::line,
          "probit-two-doses", ProbitExercisesTest::two,
          "probit-working", ProbitExercisesTest::working,
          "probit-weighted", ProbitExercisesTest::weighted);

  static Stream<ExerciseType> types() {
    return ProbitExercises.first().stream();
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
    assertThat(named).isEqualTo(EnumSet.allOf(ProbitMistake.class));
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    ExerciseContract.sameKeys(ProbitExercises.class, "probit");
  }

  private static List<Object> transform(Exercise exercise) {
    return List.of(PROBITS.inverseCumulativeProbability(exercise.givens().number("percent") / 100));
  }

  private static List<Object> resistance(Exercise exercise) {
    return List.of(exercise.givens().number("field") / exercise.givens().number("susceptible"));
  }

  /** Everything on natural logarithms. */
  private static List<Object> line(Exercise exercise) {
    var given = exercise.givens();
    double perE = given.number("slope") / Math.log(10);
    double half = Math.exp((5 - given.number("intercept")) / perE);
    double ninety =
        Math.exp((PROBITS.inverseCumulativeProbability(0.9) - given.number("intercept")) / perE);
    double share =
        PROBITS.cumulativeProbability(
            given.number("intercept") + perE * Math.log(given.number("dose")));
    return List.of(half, ninety, 100 * share);
  }

  private static List<Object> two(Exercise exercise) {
    var given = exercise.givens();
    double low = PROBITS.inverseCumulativeProbability(given.number("lowPercent") / 100);
    double high = PROBITS.inverseCumulativeProbability(given.number("highPercent") / 100);
    double ratio = given.number("high") / given.number("low");
    // The share of the way from the low to the high dose, on the scale of their ratio.
    double way = (5 - low) / (high - low);
    var answers =
        new ArrayList<Object>(
            List.of(
                (high - low) * Math.log(10) / Math.log(ratio),
                given.number("low") * Math.pow(ratio, way)));
    if (exercise.key().difficulty() == Difficulty.DEMANDING) {
      double far = (PROBITS.inverseCumulativeProbability(0.9) - low) / (high - low);
      answers.add(given.number("low") * Math.pow(ratio, far));
    }
    return answers;
  }

  /** The working probit as one step of Newton's method: expected + (share - P) / density. */
  private static List<Object> working(Exercise exercise) {
    var given = exercise.givens();
    double expected =
        given.number("intercept")
            + given.number("slope") * Math.log(given.number("dose")) / Math.log(10);
    double share = PROBITS.cumulativeProbability(expected);
    double density = PROBITS.density(expected);
    double n = given.number("animals");
    return List.of(
        expected,
        n * density * density / (share * (1 - share)),
        expected + (given.number("dead") / n - share) / density);
  }

  /** Normal equations solved by Cramer's rule. */
  private static List<Object> weighted(Exercise exercise) {
    var given = exercise.givens();
    double determinant =
        given.number("w") * given.number("wxx") - given.number("wx") * given.number("wx");
    double slope =
        (given.number("w") * given.number("wxy") - given.number("wx") * given.number("wy"))
            / determinant;
    double intercept =
        (given.number("wy") * given.number("wxx") - given.number("wx") * given.number("wxy"))
            / determinant;
    return List.of(
        given.number("wx") / given.number("w"),
        given.number("wy") / given.number("w"),
        slope,
        Math.pow(10, (5 - intercept) / slope));
  }
}
