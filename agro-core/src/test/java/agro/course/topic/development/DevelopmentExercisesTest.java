package agro.course.topic.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.course.Exercise;
import agro.course.ExerciseContract;
import agro.course.ExerciseContract.OtherRoute;
import agro.course.ExerciseType;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Other routes: plain arithmetic in the unit of the class, days added one by one, raw sums. */
class DevelopmentExercisesTest {

  private static final Map<String, OtherRoute> ROUTES =
      Map.of(
          "development-share", DevelopmentExercisesTest::share,
          "development-days", DevelopmentExercisesTest::constantDays,
          "development-line", DevelopmentExercisesTest::line,
          "development-two-temperatures", DevelopmentExercisesTest::twoTemperatures,
          "development-mixed", DevelopmentExercisesTest::mixed,
          "development-stages", DevelopmentExercisesTest::stages,
          "development-generations", DevelopmentExercisesTest::generations,
          "development-least-squares", DevelopmentExercisesTest::leastSquares,
          "development-optimum", DevelopmentExercisesTest::optimum,
          "development-next-flight", DevelopmentExercisesTest::nextFlight);

  static Stream<ExerciseType> types() {
    return DevelopmentExercises.first().stream();
  }

  @ParameterizedTest
  @MethodSource("types")
  void everyTypeKeepsTheContract(ExerciseType type) {
    ExerciseContract.holds(type, ROUTES.get(type.code()));
  }

  @Tag("slow")
  @ParameterizedTest
  @MethodSource("types")
  void everyTypeKeepsTheContractOverAThousandSeeds(ExerciseType type) {
    ExerciseContract.holdsForAThousand(type, ROUTES.get(type.code()));
  }

  @ParameterizedTest
  @MethodSource("types")
  void everyNamedMistakeComesUp(ExerciseType type) {
    assertThat(ExerciseContract.mistakesMet(type)).isEqualTo(type.mistakes());
  }

  @Test
  void everyMistakeBelongsToAType() {
    var named = new HashSet<>();
    types().forEach(type -> named.addAll(type.mistakes()));
    assertThat(named).isEqualTo(EnumSet.allOf(DevelopmentMistake.class));
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    ExerciseContract.sameKeys(DevelopmentExercises.class, "development");
  }

  private static double given(Exercise exercise, String name) {
    return exercise.givens().number(name);
  }

  private static List<Object> share(Exercise exercise) {
    return List.of(given(exercise, "days") * 100 / given(exercise, "duration"));
  }

  private static List<Object> constantDays(Exercise exercise) {
    return List.of(
        1 / ((given(exercise, "at") - given(exercise, "lower")) / given(exercise, "requirement")));
  }

  private static List<Object> line(Exercise exercise) {
    double a = given(exercise, "a");
    double b = given(exercise, "b");
    return List.of(-a / b, 1 / b, 1 / (a + b * given(exercise, "at")));
  }

  /** Through the rates: their rise for a degree first. */
  private static List<Object> twoTemperatures(Exercise exercise) {
    double cool = given(exercise, "cool");
    double slow = 1 / given(exercise, "cool days");
    double rise = (1 / given(exercise, "warm days") - slow) / (given(exercise, "warm") - cool);
    return List.of(
        cool - slow / rise, 1 / rise, 1 / (slow + rise * (given(exercise, "at") - cool)));
  }

  /** Day by day, until the stage is done. */
  private static List<Object> mixed(Exercise exercise) {
    var durations = exercise.givens().numbers("durations");
    int cool = (int) given(exercise, "cool");
    int mild = (int) given(exercise, "mild");
    double done = 0;
    for (int day = 0; day < cool + mild; day++) {
      done += 1 / durations.get(day < cool ? 0 : 1);
    }
    int days = cool + mild;
    for (double sum = done; sum < 1; sum += 1 / durations.get(2)) {
      days++;
    }
    return List.of(
        100 * done,
        durations.get(2) - done * durations.get(2),
        exercise.givens().day("start").plusDays(days));
  }

  private static List<Object> stages(Exercise exercise) {
    double above = given(exercise, "at") - given(exercise, "lower");
    double larva = given(exercise, "larva");
    double all = given(exercise, "egg") + larva + given(exercise, "pupa");
    return List.of(larva / above, all / above, 100 * larva / all);
  }

  private static List<Object> generations(Exercise exercise) {
    var means = exercise.givens().numbers("means");
    double lower = given(exercise, "lower");
    double sum = 0;
    for (int i = 0; i < means.size(); i++) {
      int days = java.time.YearMonth.of(2027, 3 + i).lengthOfMonth();
      for (int day = 0; day < days; day++) {
        sum += Math.max(0, means.get(i) - lower);
      }
    }
    double left = sum - given(exercise, "first flight");
    double generation = given(exercise, "egg to adult") + given(exercise, "before eggs");
    double last = left % generation;
    return List.of(sum, left / generation, 100 * last / generation);
  }

  /** Slope and threshold by the raw sums of the first points. */
  private record Raw(double n, double t, double r, double tt, double tr) {
    static Raw of(Exercise exercise, int points) {
      var at = exercise.givens().numbers("temperatures");
      var days = exercise.givens().numbers("days");
      double t = 0;
      double r = 0;
      double tt = 0;
      double tr = 0;
      for (int i = 0; i < points; i++) {
        t += at.get(i);
        r += 1 / days.get(i);
        tt += at.get(i) * at.get(i);
        tr += at.get(i) / days.get(i);
      }
      return new Raw(points, t, r, tt, tr);
    }

    double slope() {
      return (n * tr - t * r) / (n * tt - t * t);
    }

    double zero() {
      return (t * tr - r * tt) / (n * tr - t * r);
    }
  }

  private static List<Object> leastSquares(Exercise exercise) {
    var raw = Raw.of(exercise, 4);
    double slope = raw.slope();
    double s = given(exercise, "deviation");
    var at = exercise.givens().numbers("temperatures");
    var days = exercise.givens().numbers("days");
    double left =
        IntStream.range(0, 4)
            .mapToDouble(i -> 1 / days.get(i) - slope * (at.get(i) - raw.zero()))
            .map(residual -> residual * residual)
            .sum();
    // The residual deviation in the story has three digits.
    assertThat(s).isCloseTo(Math.sqrt(left / 2), within(0.006 * s));
    // By the delta method: variance of the ratio of two uncorrelated quantities.
    double mean = raw.r / 4;
    double meanVariance = s * s / 4;
    double slopeVariance = s * s / (raw.tt - raw.t * raw.t / 4);
    double error =
        Math.sqrt(
            meanVariance / (slope * slope) + slopeVariance * mean * mean / Math.pow(slope, 4));
    return List.of(slope, raw.zero(), 1 / slope, error);
  }

  private static List<Object> optimum(Exercise exercise) {
    var days = exercise.givens().numbers("days");
    int past = 0;
    for (int i = 1; i < days.size(); i++) {
      past = days.get(i) > days.get(i - 1) ? i : past;
    }
    var raw = Raw.of(exercise, past);
    return List.of("t" + (past + 1), raw.slope(), raw.zero());
  }

  /** Day by day until the sum is there. */
  private static List<Object> nextFlight(Exercise exercise) {
    double above = given(exercise, "mean") - given(exercise, "lower");
    double sum =
        given(exercise, "before eggs") + given(exercise, "egg") + given(exercise, "larva and pupa");
    var day = exercise.givens().day("flight");
    for (double running = 0; running < sum; running += above) {
      day = day.plusDays(1);
    }
    return List.of("generation", sum, sum / above, day);
  }
}
