package agro.course.topic.sampling;

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

class SamplingExercisesTest {

  private static final Map<String, OtherRoute> ROUTES =
      Map.ofEntries(
          Map.entry("sampling-trap-night", SamplingRoutes::trapNights),
          Map.entry("sampling-area", SamplingRoutes::area),
          Map.entry("sampling-size", SamplingRoutes::size),
          Map.entry("sampling-presence", SamplingRoutes::presence),
          Map.entry("sampling-spread", SamplingRoutes::spread),
          Map.entry("sampling-strata", SamplingRoutes::strata),
          Map.entry("sampling-interval", SamplingRoutes::interval),
          Map.entry("sampling-stop-reading", SamplingRoutes::stopReading),
          Map.entry("sampling-frequencies", SamplingRoutes::frequencies),
          Map.entry("sampling-power-law", SamplingRoutes::powerLaw),
          Map.entry("sampling-stop-lines", SamplingRoutes::stopLines));

  static Stream<ExerciseType> types() {
    return SamplingExercises.first().stream();
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
    assertThat(named).isEqualTo(EnumSet.allOf(SamplingMistake.class));
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    ExerciseContract.sameKeys(SamplingExercises.class, "sampling");
  }
}
