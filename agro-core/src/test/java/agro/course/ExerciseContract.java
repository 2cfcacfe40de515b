package agro.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** What every type of exercise has to keep, over a thousand seeds and in several units. */
public final class ExerciseContract {

  private static final int SEEDS = 1_000;
  private static final int FEW_SEEDS = 60;
  private static final int EVERY_SO_MANY = 20;
  private static final Pattern BRACES = Pattern.compile("[{}]");

  /**
   * The same answers by another route: from the givens of an exercise with plain arithmetic, a
   * table or a simulation, and without the classes that solved it.
   */
  @FunctionalInterface
  public interface OtherRoute {
    /**
     * One answer for each part.
     *
     * @param exercise with its givens
     * @return a Double in the unit of the answer (or the number, per cent), a LocalDate, the code
     *     of a choice as String, or a Set of codes
     */
    List<Object> answers(Exercise exercise);
  }

  private ExerciseContract() {}

  /** A type keeps everything over some seeds, for the fast tests. */
  public static void holds(ExerciseType type, OtherRoute route) {
    holds(type, route, FEW_SEEDS);
  }

  /** A type keeps everything over a thousand seeds. */
  public static void holdsForAThousand(ExerciseType type, OtherRoute route) {
    holds(type, route, SEEDS);
  }

  private static void holds(ExerciseType type, OtherRoute route, int most) {
    for (var units : List.of(CourseUnits.METRIC, CourseUnits.US)) {
      for (var difficulty : type.difficulties()) {
        for (boolean exam : new boolean[] {false, true}) {
          int seeds = units.equals(CourseUnits.METRIC) && !exam ? most : most / 5;
          holds(type, route, difficulty, context(units, exam), seeds);
        }
      }
    }
  }

  private static Map<TextLanguage, CourseContext> context(CourseUnits units, boolean exam) {
    var contexts = new EnumMap<TextLanguage, CourseContext>(TextLanguage.class);
    for (var language : TextLanguage.values()) {
      contexts.put(
          language,
          new CourseContext(
              CourseSetting.osmereVale(language).withUnits(units), CourseWords.of(language), exam));
    }
    return contexts;
  }

  private static void holds(
      ExerciseType type,
      OtherRoute route,
      Difficulty difficulty,
      Map<TextLanguage, CourseContext> contexts,
      int seeds) {
    Set<String> prints = ConcurrentHashMap.newKeySet();
    Set<Mistake> met = ConcurrentHashMap.newKeySet();
    IntStream.range(0, seeds)
        .parallel()
        .forEach(
            seed -> {
              var key = new ExerciseKey(type.code(), difficulty, GeneratorVersion.FIRST, seed);
              var exercise = Exercise.set(type, key, contexts.get(TextLanguage.ENGLISH));
              agrees(exercise, route);
              prints.add(exercise.givens().fingerprint());
              for (var part : exercise.solution()) {
                assertThat(part.slips()).as("slips of %s", key).isNotEmpty();
                part.slips().forEach(slip -> met.add(slip.mistake()));
              }
              if (seed % EVERY_SO_MANY == 0) {
                speaksBoth(exercise, Exercise.set(type, key, contexts.get(TextLanguage.GERMAN)));
              }
            });
    assertThat(type.mistakes()).as("mistakes that %s names", type.code()).containsAll(met);
    assertThat(prints.size()).as("different exercises of %s", type.code()).isGreaterThan(seeds / 5);
  }

  /** Every mistake that a type names comes up in some exercise of it. */
  public static Set<Mistake> mistakesMet(ExerciseType type) {
    var met = new HashSet<Mistake>();
    for (var units : List.of(CourseUnits.METRIC, CourseUnits.US)) {
      for (var difficulty : type.difficulties()) {
        for (int seed = 0; seed < SEEDS / 10; seed++) {
          var key = new ExerciseKey(type.code(), difficulty, GeneratorVersion.FIRST, seed);
          Exercise.set(type, key, context(units, false).get(TextLanguage.ENGLISH))
              .solution()
              .forEach(part -> part.slips().forEach(slip -> met.add(slip.mistake())));
        }
      }
    }
    return met;
  }

  private static void agrees(Exercise exercise, OtherRoute route) {
    var solution = exercise.solution();
    var others = route.answers(exercise);
    assertThat(others).as("parts of %s", exercise.key()).hasSameSizeAs(solution);
    for (int i = 0; i < others.size(); i++) {
      var right = solution.get(i).answer();
      var other = others.get(i);
      var where = exercise.key() + " " + Exercise.letter(i) + " " + exercise.givens().fingerprint();
      if (other instanceof Double number) {
        double ours = number(right);
        assertThat(ours)
            .as(where)
            .isCloseTo(number, within(1e-9 * Math.max(1e-3, Math.abs(number))));
      } else if (right instanceof DayAnswer day) {
        assertThat(day.day()).as(where).isEqualTo(other);
      } else if (right instanceof ChoiceAnswer choice) {
        assertThat(choice.code()).as(where).isEqualTo(other);
      } else {
        assertThat(((CodesAnswer) right).codes()).as(where).isEqualTo(other);
      }
    }
  }

  private static double number(ExpectedAnswer answer) {
    if (answer instanceof MeasuredAnswer<?> measured) {
      return measured.number();
    }
    if (answer instanceof ThermalTimeAnswer sum) {
      return sum.number();
    }
    if (answer instanceof TemperatureAnswer temperature) {
      return temperature.number();
    }
    return answer instanceof PercentAnswer percent
        ? percent.percent()
        : ((NumberAnswer) answer).number();
  }

  private static void speaksBoth(Exercise english, Exercise german) {
    assertThat(german.givens().fingerprint()).isEqualTo(english.givens().fingerprint());
    var one = english.worked().toText();
    var other = german.worked().toText();
    assertThat(BRACES.matcher(one + other).find()).as(one + other).isFalse();
    assertThat(one).isNotEqualTo(other);
    assertThat(german.title()).isNotBlank();
    for (var part : german.solution()) {
      for (var slip : part.slips()) {
        assertThat(slip.mistake().feedback(german.context().words())).isNotBlank();
        assertThat(slip.mistake().phrase(german.context().words())).isNotBlank();
      }
    }
    for (int i = 0; i < english.parts().size(); i++) {
      assertThat(english.parts().get(i).question()).isNotEqualTo(german.parts().get(i).question());
    }
  }

  /** Two bundles of one name have the same keys and the same names in braces. */
  public static void sameKeys(Class<?> owner, String name) {
    var english = Wording.of(owner, name, TextLanguage.ENGLISH);
    var german = Wording.of(owner, name, TextLanguage.GERMAN);
    assertThat(german.keys()).isEqualTo(english.keys());
    for (var key : english.keys()) {
      assertThat(names(german.text(key))).as(key).isEqualTo(names(english.text(key)));
    }
  }

  private static Set<String> names(String text) {
    var names = new TreeSet<String>();
    Pattern.compile("\\{(\\w+)}").matcher(text).results().forEach(one -> names.add(one.group(1)));
    return names;
  }
}
