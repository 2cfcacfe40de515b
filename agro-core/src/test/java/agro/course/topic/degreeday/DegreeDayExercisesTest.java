package agro.course.topic.degreeday;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.ExamAid;
import agro.course.Exercise;
import agro.course.ExerciseContract;
import agro.course.ExerciseContract.OtherRoute;
import agro.course.ExerciseKey;
import agro.course.ExerciseType;
import agro.course.GeneratorVersion;
import agro.working.TextLanguage;
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

/** Other routes: plain arithmetic in the unit of the class, and Simpson's rule under the sine. */
class DegreeDayExercisesTest {

  private static final Map<String, OtherRoute> ROUTES =
      Map.of(
          "degree-days-day", DegreeDayExercisesTest::day,
          "degree-days-units", DegreeDayExercisesTest::units,
          "degree-days-visits", DegreeDayExercisesTest::visits,
          "degree-days-cool-day", DegreeDayExercisesTest::coolDay,
          "degree-days-sine", DegreeDayExercisesTest::sine,
          "degree-days-week", DegreeDayExercisesTest::week,
          "degree-days-date", DegreeDayExercisesTest::date,
          "degree-days-offset", DegreeDayExercisesTest::offset,
          "degree-days-cutoff", DegreeDayExercisesTest::cutoff,
          "degree-days-forecast", DegreeDayExercisesTest::forecast);

  static Stream<ExerciseType> types() {
    return DegreeDayExercises.first().stream();
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
    assertThat(named).isEqualTo(EnumSet.allOf(DegreeDayMistake.class));
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    ExerciseContract.sameKeys(DegreeDayExercises.class, "degreeday");
  }

  /**
   * No arcsine in an exam: the printed table is named, in the questions and on the list of aids.
   */
  @Test
  void anExamNeedsTheTableAndNoArcsine() {
    var setting = CourseSetting.osmereVale(TextLanguage.ENGLISH);
    var words = CourseWords.of(TextLanguage.ENGLISH);
    for (boolean exam : new boolean[] {true, false}) {
      var context = new CourseContext(setting, words, exam);
      for (long seed = 0; seed < 20; seed++) {
        for (var type : List.of(new SineDay(), new HotDay())) {
          var difficulty = type.difficulties().iterator().next();
          var key = new ExerciseKey(type.code(), difficulty, GeneratorVersion.FIRST, seed);
          var exercise = Exercise.set(type, key, context);
          assertThat(exercise.body().aids().contains(ExamAid.DEGREE_DAY_TABLE)).isEqualTo(exam);
          var text = exercise.worked().toText();
          assertThat(text.contains("arcsin")).isEqualTo(!exam);
          assertThat(text.contains("printed table")).isEqualTo(exam);
        }
      }
    }
  }

  private static double given(Exercise exercise, String name) {
    return exercise.givens().number(name);
  }

  private static boolean celsius(Exercise exercise) {
    return exercise.context().units().equals(CourseUnits.METRIC);
  }

  private static double above(double min, double max, double lower) {
    return Math.max(0, (min + max) / 2 - lower);
  }

  private static double[] daily(Exercise exercise) {
    var min = exercise.givens().numbers("min");
    var max = exercise.givens().numbers("max");
    double lower = given(exercise, "lower");
    return IntStream.range(0, min.size())
        .mapToDouble(day -> above(min.get(day), max.get(day), lower))
        .toArray();
  }

  private static double sum(double[] values, int from, int to) {
    return IntStream.range(from, to).mapToDouble(i -> values[i]).sum();
  }

  private static List<Object> day(Exercise exercise) {
    return List.of(
        (given(exercise, "min") + given(exercise, "max") - 2 * given(exercise, "lower")) / 2);
  }

  /** By steps of a fifth and of a ninth: 5 °C are 9 °F. */
  private static List<Object> units(Exercise exercise) {
    double lower = given(exercise, "lower");
    double requirement = given(exercise, "requirement");
    boolean celsius = celsius(exercise);
    double sum = celsius ? requirement / 9 * 5 : requirement / 5 * 9;
    double threshold = celsius ? (lower - 32) / 9 * 5 : lower / 5 * 9 + 32;
    return exercise.parts().size() == 1
        ? List.of(sum)
        : List.of(sum, threshold, sum / (given(exercise, "at") - threshold));
  }

  private static List<Object> visits(Exercise exercise) {
    var all = exercise.givens().numbers("degree-days");
    double sum = 0;
    for (int day = 0; day < all.size(); day++) {
      boolean hung = day >= given(exercise, "from") && day < given(exercise, "to");
      sum += hung ? all.get(day) : 0;
    }
    return exercise.parts().size() == 1
        ? List.of(sum)
        : List.of(sum, 100 * given(exercise, "caught") / sum);
  }

  private static List<Object> coolDay(Exercise exercise) {
    double min = given(exercise, "min");
    double max = given(exercise, "max");
    double lower = given(exercise, "lower");
    double mean = above(min, max, lower);
    // Half the height of the warm triangle, for the share of the day that is warm.
    double triangle = (max - lower) / 2 * ((max - lower) / (max - min));
    return List.of(mean, triangle, given(exercise, "days") * (triangle - mean));
  }

  /** Mean of max(0, cos t − z) over a turn, by Simpson's rule between the crossings. */
  private static double factor(double z) {
    double end = Math.acos(z);
    int steps = 2000;
    double sum = 0;
    for (int i = 0; i <= steps; i++) {
      double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * (Math.cos(end * i / steps) - z);
    }
    return sum * end / steps / 3 / Math.PI;
  }

  private static double sineArea(Exercise exercise, double threshold) {
    double half = (given(exercise, "max") - given(exercise, "min")) / 2;
    double z = (threshold - given(exercise, "min")) / half - 1;
    // In an exam z has two decimals and the table four.
    return exercise.context().exam()
        ? half * Math.round(1e4 * factor(Math.round(100 * z) / 100.0)) / 1e4
        : half * factor(z);
  }

  private static List<Object> sine(Exercise exercise) {
    double half = (given(exercise, "max") - given(exercise, "min")) / 2;
    double lower = given(exercise, "lower");
    return List.of((lower - given(exercise, "min")) / half - 1, sineArea(exercise, lower));
  }

  private static List<Object> cutoff(Exercise exercise) {
    double min = given(exercise, "min");
    double max = given(exercise, "max");
    double lower = given(exercise, "lower");
    double upper = given(exercise, "upper");
    assertThat(min).isGreaterThanOrEqualTo(lower);
    double all = above(min, max, lower);
    double over = sineArea(exercise, upper);
    double share = Math.acos((2 * upper - max - min) / (max - min)) / Math.PI;
    double net =
        switch (exercise.givens().text("rule")) {
          case "HORIZONTAL" -> all - over;
          case "INTERMEDIATE" -> Math.max(0, all - 2 * over);
          default -> all - over - (upper - lower) * share;
        };
    return List.of(all, over, net);
  }

  private static List<Object> week(Exercise exercise) {
    double week = sum(daily(exercise), 0, 7);
    double running = given(exercise, "before") + week;
    return List.of(week, running, given(exercise, "requirement") - running);
  }

  private static List<Object> date(Exercise exercise) {
    var daily = daily(exercise);
    int from = exercise.givens().text("convention").equals("biofix.counts") ? 0 : 1;
    int day = from;
    while (sum(daily, from, day + 1) < given(exercise, "requirement")) {
      day++;
    }
    return List.of(
        sum(daily, from, (int) given(exercise, "asked") + 1),
        exercise.givens().day("first").plusDays(day));
  }

  private static List<Object> offset(Exercise exercise) {
    double offset = given(exercise, "offset");
    double min = given(exercise, "min");
    double max = given(exercise, "max");
    double lower = given(exercise, "lower");
    double field = above(min + offset, max + offset, lower);
    return List.of(
        (min + offset + max + offset) / 2,
        field,
        given(exercise, "days") * (field - above(min, max, lower)));
  }

  /** The day is found by adding forecast days until the requirement is there. */
  private static List<Object> forecast(Exercise exercise) {
    var daily = daily(exercise);
    double requirement = given(exercise, "requirement");
    double sum = sum(daily, 1, daily.length);
    double ahead =
        above(
            given(exercise, "forecast min"),
            given(exercise, "forecast max"),
            given(exercise, "lower"));
    var day = exercise.givens().day("first").plusDays(daily.length - 1);
    double running = sum;
    while (running < requirement) {
      running += ahead;
      day = day.plusDays(1);
    }
    return List.of(sum, requirement - sum, (requirement - sum) / ahead, day);
  }
}
