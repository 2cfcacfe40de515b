package agro.course.topic.units;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.Exercise;
import agro.course.ExerciseContract;
import agro.course.ExerciseContract.OtherRoute;
import agro.course.ExerciseKey;
import agro.course.ExerciseType;
import agro.course.GeneratorVersion;
import agro.units.LandUnit;
import agro.units.TemperatureUnit;
import agro.units.VolumeUnit;
import agro.working.TextLanguage;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class UnitExercisesTest {

  /** Defined sizes: 231 cubic inches, the international foot and pound. */
  private static final double GALLON = 231 * 2.54 * 2.54 * 2.54 / 1000;

  private static final double FLUID_OUNCE = GALLON * 1000 / 128;
  private static final double ACRE = 43560 * 0.3048 * 0.3048;
  private static final double POUND = 0.45359237;

  private static final Map<String, OtherRoute> ROUTES =
      Map.of(
          "units-rate", UnitExercisesTest::rate,
          "units-strength", UnitExercisesTest::strength,
          "units-temperature", UnitExercisesTest::temperature,
          "units-concentration", UnitExercisesTest::concentration,
          "units-spoons", UnitExercisesTest::spoons,
          "units-field-area", UnitExercisesTest::fieldArea,
          "units-speed", UnitExercisesTest::speed,
          "units-active", UnitExercisesTest::active,
          "units-degree-days", UnitExercisesTest::degreeDays,
          "units-foreign-label", UnitExercisesTest::foreignLabel);

  static Stream<ExerciseType> types() {
    return UnitExercises.first().stream();
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
    assertThat(named).isEqualTo(EnumSet.allOf(UnitMistake.class));
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    ExerciseContract.sameKeys(UnitExercises.class, "units");
  }

  @ParameterizedTest
  @MethodSource("types")
  void exercisesAreSetInLocalUnitsOfLand(ExerciseType type) {
    var language = TextLanguage.GERMAN;
    for (var land : List.of(LandUnit.BIGHA_WEST_BENGAL, LandUnit.MU_CHINA, LandUnit.CENT)) {
      var setting = CourseSetting.osmereVale(language).withUnits(CourseUnits.METRIC.withLand(land));
      var context = new CourseContext(setting, CourseWords.of(language), false);
      for (Difficulty difficulty : type.difficulties()) {
        for (int seed = 0; seed < 20; seed++) {
          var key = new ExerciseKey(type.code(), difficulty, GeneratorVersion.FIRST, seed);
          var solution = Exercise.set(type, key, context).solution();
          assertThat(solution).allSatisfy(part -> assertThat(part.slips()).isNotEmpty());
        }
      }
    }
  }

  private static boolean american(Exercise exercise) {
    return exercise.context().units().measure() == VolumeUnit.US_FLUID_OUNCE;
  }

  /** Litres in the unit of the measuring vessel. */
  private static double measure(Exercise exercise) {
    return american(exercise) ? FLUID_OUNCE / 1000 : 0.001;
  }

  private static double water(Exercise exercise) {
    return american(exercise) ? GALLON : 1;
  }

  private static double hectares(Exercise exercise) {
    return american(exercise) ? ACRE / 10_000 : 1;
  }

  private static List<Object> rate(Exercise exercise) {
    double litres =
        exercise.givens().text("unit").equals("water") ? water(exercise) : measure(exercise);
    return List.of(exercise.givens().base("rate") * hectares(exercise) / litres);
  }

  private static List<Object> strength(Exercise exercise) {
    double litresPerLitre = exercise.givens().base("strength") / 1000;
    return List.of(litresPerLitre * water(exercise) / measure(exercise));
  }

  /** By steps on the two thermometers: 0 and 100 °C stand beside 32 and 212 °F. */
  private static double onOtherThermometer(Exercise exercise, double value) {
    return fahrenheit(exercise) ? 32 + value * 180 / 100 : (value - 32) * 100 / 180;
  }

  private static double otherDegrees(Exercise exercise, double difference) {
    return onOtherThermometer(exercise, difference) - onOtherThermometer(exercise, 0);
  }

  private static boolean fahrenheit(Exercise exercise) {
    return exercise.context().units().temperature() == TemperatureUnit.FAHRENHEIT;
  }

  private static List<Object> temperature(Exercise exercise) {
    double value = exercise.givens().number("value");
    return List.of(
        exercise.givens().text("kind").equals("difference")
            ? otherDegrees(exercise, value)
            : onOtherThermometer(exercise, value));
  }

  private static List<Object> concentration(Exercise exercise) {
    var givens = exercise.givens();
    double share = givens.number("number") / (givens.text("sign").equals("per cent") ? 100 : 1000);
    double tank = share * givens.base("tank") / measure(exercise);
    if (exercise.parts().size() == 1) {
      return List.of(tank);
    }
    return List.of(share * 1000, share * givens.number("content") * 1000, tank);
  }

  private static List<Object> spoons(Exercise exercise) {
    var givens = exercise.givens();
    double size =
        switch (givens.text("spoon")) {
          case "tbsp (US)" -> FLUID_OUNCE / 2;
          case "tbsp (AU)" -> 20;
          default -> 15;
        };
    double volume = givens.number("spoons") * size;
    double share = 100 * volume / (givens.base("wanted") * 1000);
    return exercise.parts().size() == 1 ? List.of(volume) : List.of(volume, share);
  }

  /** A trapezium as two triangles over its diagonal. */
  private static List<Object> fieldArea(Exercise exercise) {
    var givens = exercise.givens();
    double squares = american(exercise) ? 43560 : 10_000;
    if (exercise.parts().size() == 1) {
      return List.of(givens.number("base") * givens.number("height") / 2 / squares);
    }
    double pace = (american(exercise) ? 100 : 50) / givens.number("paces");
    double height = givens.number("across") * pace;
    double area =
        givens.number("first") * pace * height / 2 + givens.number("second") * pace * height / 2;
    return List.of(pace, area, area / squares);
  }

  private static List<Object> speed(Exercise exercise) {
    var givens = exercise.givens();
    double metresPerHour = givens.base("course") * 3600 / givens.base("time");
    double speed = metresPerHour / (american(exercise) ? 5280 * 0.3048 : 1000);
    double seconds = givens.base("row") / givens.base("course") * givens.base("time");
    return exercise.parts().size() == 1 ? List.of(speed) : List.of(speed, seconds);
  }

  private static List<Object> active(Exercise exercise) {
    var givens = exercise.givens();
    double kilogramsPerLitre = givens.number("percent") / 100;
    double kilogramsPerHectare = givens.base("rate") * kilogramsPerLitre;
    double poundsPerAcre = kilogramsPerHectare / POUND * ACRE / 10_000;
    return american(exercise)
        ? List.of(kilogramsPerLitre / POUND * GALLON, poundsPerAcre, kilogramsPerHectare)
        : List.of(kilogramsPerLitre * 1000, kilogramsPerHectare, poundsPerAcre);
  }

  private static List<Object> degreeDays(Exercise exercise) {
    var givens = exercise.givens();
    double threshold = onOtherThermometer(exercise, givens.number("threshold"));
    double sum = otherDegrees(exercise, givens.number("sum"));
    double warmer = otherDegrees(exercise, givens.number("warmer"));
    double mean = givens.number("mean");
    return exercise.parts().size() == 3
        ? List.of(threshold, sum, sum / (mean - threshold))
        : List.of(threshold, sum, warmer, sum / (mean - warmer - threshold));
  }

  private static List<Object> foreignLabel(Exercise exercise) {
    var givens = exercise.givens();
    double product = givens.base("rate") * hectares(exercise) / measure(exercise);
    double spray = givens.base("spray") * hectares(exercise) / water(exercise);
    double tanks = givens.base("tank") / water(exercise);
    return List.of(product, spray, product / spray, product / spray * tanks);
  }
}
