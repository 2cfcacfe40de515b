package agro.course.topic.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.Exercise;
import agro.course.ExerciseKey;
import agro.course.GeneratorVersion;
import agro.course.NumberAnswer;
import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.sampling.dispersion.DispersionIndices;
import agro.sampling.injury.StratifiedMean;
import agro.working.TextLanguage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Parts that reckon on with an earlier answer say what the classes for advisers say. */
class AdviserOnSamplingTest {

  private static Exercise exercise(String code, Difficulty difficulty, long seed) {
    var type =
        SamplingExercises.first().stream()
            .filter(one -> one.code().equals(code))
            .findFirst()
            .orElseThrow();
    var context =
        new CourseContext(
            CourseSetting.osmereVale(TextLanguage.ENGLISH),
            CourseWords.of(TextLanguage.ENGLISH),
            false);
    return Exercise.set(
        type, new ExerciseKey(code, difficulty, GeneratorVersion.FIRST, seed), context);
  }

  private static double answer(Exercise exercise, int part) {
    return ((NumberAnswer) exercise.solution().get(part).answer()).number();
  }

  private static CountSample sample(List<Double> counts) {
    return new CountSample(
        "field",
        SamplingUnit.of(SamplingUnit.Kind.PLANT),
        counts.stream().map(Double::intValue).toList());
  }

  @Test
  void crowdingOfAFrequencyTable() {
    for (int seed = 0; seed < 50; seed++) {
      var exercise = exercise("sampling-frequencies", Difficulty.DEMANDING, seed);
      var plants =
          exercise.givens().numbers("plants").stream().mapToInt(Double::intValue).toArray();
      var indices =
          DispersionIndices.of(
              CountSample.ofFrequencies("field", SamplingUnit.of(SamplingUnit.Kind.PLANT), plants));
      assertThat(answer(exercise, 3)).isCloseTo(indices.meanCrowding(), within(1e-9));
    }
  }

  @Test
  void meanOfAFieldInParts() {
    for (int seed = 0; seed < 50; seed++) {
      var exercise = exercise("sampling-strata", Difficulty.ROUTINE, seed);
      var givens = exercise.givens();
      double percent = givens.number("percent");
      var field =
          StratifiedMean.of(
              StratifiedMean.Stratum.ofSize("edge", percent, sample(givens.numbers("edge"))),
              StratifiedMean.Stratum.ofSize(
                  "middle", 100 - percent, sample(givens.numbers("middle"))));
      assertThat(answer(exercise, 2)).isCloseTo(field.density().mean(), within(1e-9));
    }
  }
}
