package agro.course.topic.dose;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.Exercise;
import agro.course.ExerciseContract;
import agro.course.ExerciseContract.OtherRoute;
import agro.course.ExerciseKey;
import agro.course.ExerciseType;
import agro.course.GeneratorVersion;
import agro.units.LandUnit;
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

class DoseExercisesTest {

  /** Defined sizes: 231 cubic inches, the international foot and pound. */
  private static final double GALLON = 231 * 2.54 * 2.54 * 2.54 / 1000;

  private static final double ACRE = 43560 * 0.3048 * 0.3048;
  private static final double POUND = 0.45359237;

  private static final Map<String, OtherRoute> ROUTES =
      Map.ofEntries(
          Map.entry("dose-field", DoseExercisesTest::productForField),
          Map.entry("dose-granules", DoseExercisesTest::granules),
          Map.entry("dose-active", DoseExercisesTest::active),
          Map.entry("dose-per-litre", DoseExercisesTest::perLitre),
          Map.entry("dose-seed", DoseExercisesTest::seed),
          Map.entry("dose-price", DoseExercisesTest::price),
          Map.entry("dose-tank", DoseExercisesTest::tank),
          Map.entry("dose-pumps", DoseExercisesTest::pumps),
          Map.entry("dose-band", DoseExercisesTest::band),
          Map.entry("dose-drench", DoseExercisesTest::drench),
          Map.entry("dose-stock", DoseExercisesTest::stock),
          Map.entry("dose-manure", DoseExercisesTest::manure));

  static Stream<ExerciseType> types() {
    return DoseExercises.first().stream();
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
    assertThat(named).isEqualTo(EnumSet.allOf(DosingMistake.class));
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    ExerciseContract.sameKeys(DoseExercises.class, "dose");
  }

  /** Litres from square metres and litres per hectare, in mL or fl oz of 29.5735295625 mL. */
  private static List<Object> productForField(Exercise exercise) {
    double litres = exercise.givens().base("rate") * exercise.givens().base("area") / 10_000;
    boolean metric = exercise.context().units().equals(CourseUnits.METRIC);
    return List.of(litres * 1000 / (metric ? 1 : 29.5735295625));
  }

  private static boolean american(Exercise exercise) {
    return !exercise.context().units().equals(CourseUnits.METRIC);
  }

  /** Litres of the unit of the measuring vessel. */
  private static double measure(Exercise exercise) {
    return american(exercise) ? GALLON / 128 : 0.001;
  }

  private static double water(Exercise exercise) {
    return american(exercise) ? GALLON : 1;
  }

  /** Square metres of the unit of land. */
  private static double land(Exercise exercise) {
    return american(exercise) ? ACRE : 10_000;
  }

  /** Kilograms of the unit of weighed products. */
  private static double powder(Exercise exercise) {
    return american(exercise) ? POUND / 16 : 0.001;
  }

  private static double seedUnit(Exercise exercise) {
    return american(exercise) ? POUND : 1;
  }

  private static List<Object> granules(Exercise exercise) {
    var givens = exercise.givens();
    double rows = 10_000 / givens.base("spacing");
    return List.of(givens.base("rate") / rows * givens.base("row") / powder(exercise));
  }

  private static List<Object> active(Exercise exercise) {
    var givens = exercise.givens();
    double perLand = land(exercise) / 10_000;
    if (exercise.parts().size() == 1) {
      double litres = givens.base("wanted") * 1000 / givens.base("content");
      return List.of(litres * perLand / measure(exercise));
    }
    double grams = givens.base("rate") * givens.base("strong");
    double other = givens.base("rate") * givens.base("strong") / givens.base("other");
    double gram = american(exercise) ? POUND * 1000 : 1;
    return List.of(
        grams * perLand / gram,
        other * perLand / measure(exercise),
        other * givens.base("area") / 10_000 / measure(exercise));
  }

  private static List<Object> perLitre(Exercise exercise) {
    var givens = exercise.givens();
    double perLand = land(exercise) / 10_000 / measure(exercise) / 1000;
    double given = givens.base("strength") * givens.base("own") * perLand;
    double meant = givens.base("strength") * givens.base("assumed") * perLand;
    if (exercise.parts().size() == 1) {
      return List.of(given);
    }
    double volumes = givens.base("own") / givens.base("assumed");
    double needed = givens.base("strength") / volumes / 1000 * water(exercise) / measure(exercise);
    return List.of(given, meant, 100 * volumes, needed);
  }

  private static List<Object> seed(Exercise exercise) {
    var givens = exercise.givens();
    double share = givens.base("rate") / 1000;
    if (exercise.parts().size() == 1) {
      return List.of(givens.base("lot") * share / powder(exercise));
    }
    double seed = givens.base("sowing") * givens.base("area") / 10_000;
    return List.of(
        seed / seedUnit(exercise),
        seed * share / powder(exercise),
        givens.base("sowing") * share / powder(exercise) * land(exercise) / 10_000);
  }

  private static List<Object> price(Exercise exercise) {
    var givens = exercise.givens();
    double first = cost(exercise, "first");
    if (exercise.parts().size() == 1) {
      return List.of(first);
    }
    double second = cost(exercise, "second");
    double lands = givens.base("area") / land(exercise);
    return List.of(
        first,
        second,
        first < second ? "a" : "b",
        Math.max(first * lands - second * lands, second * lands - first * lands));
  }

  private static double cost(Exercise exercise, String name) {
    var givens = exercise.givens();
    double perLitre = givens.number(name + ".price") / givens.base(name + ".size");
    return perLitre * givens.base(name + ".rate") * land(exercise) / 10_000;
  }

  /** Fills tanks until what is left of the spray fits into one. */
  private static List<Object> tank(Exercise exercise) {
    var givens = exercise.givens();
    double tank = givens.base("tank");
    double left = givens.base("spray") * givens.base("area") / 10_000;
    double spray = left;
    double full = 0;
    while (left > tank) {
      left -= tank;
      full++;
    }
    double strength = givens.base("rate") / givens.base("spray") / measure(exercise);
    if (exercise.parts().size() == 4) {
      double water = water(exercise);
      return List.of(spray / water, full, left / water, left * strength);
    }
    double covered = tank / givens.base("spray") * 10_000 / land(exercise);
    return List.of(covered, tank * strength, left * strength);
  }

  private static List<Object> pumps(Exercise exercise) {
    var givens = exercise.givens();
    double onLand = givens.base("spray") * land(exercise) / 10_000 / givens.base("pump");
    double fillings = 0;
    double left = givens.base("spray") * givens.base("area") / 10_000;
    while (left > 1e-9) {
      left -= givens.base("pump");
      fillings++;
    }
    double strength = givens.base("rate") / givens.base("spray") / measure(exercise);
    double all = givens.base("rate") * givens.base("area") / 10_000 / measure(exercise);
    return List.of(onLand, givens.base("pump") * strength, fillings, all);
  }

  private static List<Object> band(Exercise exercise) {
    var givens = exercise.givens();
    double treated = givens.base("area") * givens.base("band") / givens.base("spacing");
    return List.of(
        100 * treated / givens.base("area"),
        treated / land(exercise),
        givens.base("rate") * treated / 10_000 / measure(exercise));
  }

  private static List<Object> drench(Exercise exercise) {
    var givens = exercise.givens();
    double rowMetres = givens.base("area") / givens.base("rows");
    double plants = rowMetres / givens.base("plants");
    double litres = plants * givens.base("volume");
    double product = litres * givens.base("strength") / 1000 / measure(exercise);
    return List.of(plants, litres / water(exercise), product);
  }

  private static List<Object> stock(Exercise exercise) {
    var givens = exercise.givens();
    double stock = givens.number("milligrams") * givens.number("percent") / 100;
    stock = stock / givens.base("flask");
    double first = givens.base("first") * 1000;
    double needed = first * givens.base("volume");
    double last = first * Math.pow(givens.number("factor"), -givens.number("steps"));
    return List.of(stock, needed / stock * 1000, last);
  }

  /** The heap that has the dry matter of the old one at the wanted share of water. */
  private static List<Object> manure(Exercise exercise) {
    var givens = exercise.givens();
    double heap = givens.base("heap");
    double unit = seedUnit(exercise);
    double share = givens.number("rate") / 100 / unit;
    double dry = heap - heap * givens.number("now") / 100;
    double water = dry * givens.number("wanted") / (100 - givens.number("wanted"));
    double perLand = givens.base("spread") * share * land(exercise) / 10_000;
    return List.of(heap * share, dry / unit, (water - (heap - dry)) / unit, perLand);
  }

  @ParameterizedTest
  @MethodSource("types")
  void exercisesAreSetInLocalUnitsOfLand(ExerciseType type) {
    var language = TextLanguage.GERMAN;
    for (var land : List.of(LandUnit.BIGHA_WEST_BENGAL, LandUnit.MU_CHINA, LandUnit.CENT)) {
      var setting = CourseSetting.osmereVale(language).withUnits(CourseUnits.METRIC.withLand(land));
      var context = new CourseContext(setting, CourseWords.of(language), false);
      for (var difficulty : type.difficulties()) {
        for (int seed = 0; seed < 20; seed++) {
          var key = new ExerciseKey(type.code(), difficulty, GeneratorVersion.FIRST, seed);
          var solution = Exercise.set(type, key, context).solution();
          assertThat(solution).allSatisfy(part -> assertThat(part.slips()).isNotEmpty());
        }
      }
    }
  }
}
