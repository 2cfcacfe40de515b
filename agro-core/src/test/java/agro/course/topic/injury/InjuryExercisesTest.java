package agro.course.topic.injury;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.ExerciseContract;
import agro.course.ExerciseContract.OtherRoute;
import agro.course.ExerciseType;
import agro.course.RoundedSteps;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class InjuryExercisesTest {

  private static final Map<String, OtherRoute> ROUTES =
      Map.ofEntries(
          Map.entry("injury-level-formula", InjuryRoutes::formula),
          Map.entry("injury-level-gain", InjuryRoutes::gain),
          Map.entry("injury-level-change", InjuryRoutes::change),
          Map.entry("injury-level-threshold", InjuryRoutes::threshold),
          Map.entry("injury-level-insect-days", InjuryRoutes::insectDays),
          Map.entry("injury-level-worth", InjuryRoutes::worth),
          Map.entry("injury-level-row", InjuryRoutes::row),
          Map.entry("injury-level-costs", InjuryRoutes::costs));

  static Stream<ExerciseType> types() {
    return InjuryExercises.first().stream();
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

  @ParameterizedTest
  @MethodSource("types")
  void whoRoundsAsAskedIsRight(ExerciseType type) {
    RoundedSteps.leadToRightAnswers(type);
  }

  @Test
  void everyMistakeBelongsToAType() {
    var named = new HashSet<>();
    types().forEach(type -> named.addAll(type.mistakes()));
    assertThat(named).isEqualTo(EnumSet.allOf(InjuryMistake.class));
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    ExerciseContract.sameKeys(InjuryExercises.class, "injury");
  }
}
