package agro.course.topic;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.EarlierAnswers;
import agro.course.Exercise;
import agro.course.ExerciseKey;
import agro.course.ExerciseType;
import agro.course.GeneratorVersion;
import agro.working.TextLanguage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A slip in one part leaves the later parts solvable, or says that nothing follows from it. */
class CarriedSlipsTest {

  private static final int SEEDS = 6;

  static Stream<ExerciseType> types() {
    return ExerciseCatalogue.of(GeneratorVersion.FIRST).types().stream();
  }

  @ParameterizedTest
  @MethodSource("types")
  void laterPartsAreSolvedFromWrongAnswers(ExerciseType type) {
    int solved = 0;
    int refused = 0;
    for (var units : List.of(CourseUnits.METRIC, CourseUnits.US)) {
      var language = TextLanguage.ENGLISH;
      var context =
          new CourseContext(
              CourseSetting.osmereVale(language).withUnits(units), CourseWords.of(language), false);
      for (var difficulty : type.difficulties()) {
        for (int seed = 0; seed < SEEDS; seed++) {
          var key = new ExerciseKey(type.code(), difficulty, GeneratorVersion.FIRST, seed);
          var exercise = Exercise.set(type, key, context);
          for (var earlier : slipsInOnePart(exercise)) {
            if (solves(exercise, earlier)) {
              solved++;
            } else {
              refused++;
            }
          }
        }
      }
    }
    assertThat(refused)
        .as("refused of %s, beside %s solved", type.code(), solved)
        .isLessThanOrEqualTo(solved);
  }

  /** Right answers up to a part, and one of its slips. */
  private static List<EarlierAnswers> slipsInOnePart(Exercise exercise) {
    var all = new ArrayList<EarlierAnswers>();
    var right = EarlierAnswers.none();
    for (var part : exercise.solution()) {
      for (var slip : part.slips()) {
        all.add(right.and(slip.answer().value()));
      }
      right = right.and(part.answer().value());
    }
    return all;
  }

  private static boolean solves(Exercise exercise, EarlierAnswers wrong) {
    var earlier = wrong;
    try {
      for (int i = wrong.values().size(); i < exercise.parts().size(); i++) {
        var part = exercise.parts().get(i).solution().solve(earlier);
        assertThat(part.answer().print(exercise.context().words())).isNotBlank();
        earlier = earlier.and(part.answer().value());
      }
      return true;
    } catch (IllegalArgumentException nothingFollows) {
      return false;
    }
  }
}
