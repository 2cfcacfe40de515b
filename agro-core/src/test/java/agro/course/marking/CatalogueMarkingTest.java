package agro.course.marking;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.ChoiceAnswer;
import agro.course.CodesAnswer;
import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.DayAnswer;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.Exercise;
import agro.course.ExerciseType;
import agro.course.ExpectedAnswer;
import agro.course.MeasuredAnswer;
import agro.course.SolvedPart;
import agro.course.TemperatureAnswer;
import agro.course.ThermalTimeAnswer;
import agro.course.TypicalSlip;
import agro.course.topic.ExerciseCatalogue;
import agro.units.Volume;
import agro.units.VolumeUnit;
import agro.working.TextLanguage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What marking has to keep for every exercise of the catalogue. */
class CatalogueMarkingTest {

  private static final Marker MARKER = Marker.withDefaults();
  private static final int FEW = 3;
  private static final int SOME = 12;
  private static final int MANY = 1_000;

  static List<ExerciseType> types() {
    return ExerciseCatalogue.latest().types();
  }

  @ParameterizedTest
  @MethodSource("types")
  void answersAreMarkedForWhatTheyAre(ExerciseType type) {
    holds(type, FEW);
  }

  @Tag("slow")
  @ParameterizedTest
  @MethodSource("types")
  void answersOfMoreExercisesAreMarkedForWhatTheyAre(ExerciseType type) {
    holds(type, SOME);
  }

  @Tag("slow")
  @ParameterizedTest
  @MethodSource("types")
  void rightAnswersAndSlipsAreToldApartInAThousandExercises(ExerciseType type) {
    var context =
        new CourseContext(
            CourseSetting.osmereVale(TextLanguage.ENGLISH),
            CourseWords.of(TextLanguage.ENGLISH),
            false);
    for (var difficulty : type.difficulties()) {
      IntStream.range(0, MANY)
          .parallel()
          .forEach(seed -> tellsApart(exercise(type, difficulty, seed, context)));
    }
  }

  /** With all digits in the other parts, so that no rounding on the way multiplies the work. */
  private static void tellsApart(Exercise exercise) {
    var words = exercise.context().words();
    var solution = exercise.solution();
    var right = solution.stream().map(part -> allDigits(part.answer(), words)).toList();
    var all = MARKER.mark(exercise, right);
    assertThat(all.marks()).as("%s", all.parts()).isEqualTo(all.of());
    for (int part = 0; part < solution.size(); part++) {
      isRight(exercise, right, part, solution.get(part).answer().print(words));
      for (var slip : solution.get(part).slips()) {
        isSlip(exercise, right, part, slip, slip.answer().print(words));
      }
    }
  }

  private static void holds(ExerciseType type, int seeds) {
    for (var language : TextLanguage.values()) {
      for (var units : List.of(CourseUnits.METRIC, CourseUnits.US)) {
        var context =
            new CourseContext(
                CourseSetting.osmereVale(language).withUnits(units),
                CourseWords.of(language),
                false);
        for (var difficulty : type.difficulties()) {
          for (int seed = 0; seed < seeds; seed++) {
            keeps(exercise(type, difficulty, seed, context));
          }
        }
      }
    }
  }

  private static Exercise exercise(
      ExerciseType type, Difficulty difficulty, int seed, CourseContext context) {
    return ExerciseCatalogue.latest().exercise(type.code(), difficulty, seed, context);
  }

  private static void keeps(Exercise exercise) {
    var words = exercise.context().words();
    var solution = exercise.solution();
    var right = solution.stream().map(part -> part.answer().print(words)).toList();
    var all = MARKER.mark(exercise, right);
    assertThat(all.marks()).as("%s", all.parts()).isEqualTo(all.of());
    for (int part = 0; part < solution.size(); part++) {
      for (var typed : notations(solution.get(part).answer(), words)) {
        isRight(exercise, right, part, typed);
      }
      for (var slip : solution.get(part).slips()) {
        isSlip(exercise, right, part, slip, slip.answer().print(words));
        isSlip(exercise, right, part, slip, allDigits(slip.answer(), words));
        isCarried(exercise, right, part, slip);
      }
    }
  }

  private static List<String> with(List<String> right, int part, String typed) {
    var answers = new ArrayList<>(right);
    answers.set(part, typed);
    return answers;
  }

  private static void isRight(Exercise exercise, List<String> right, int part, String typed) {
    var mark = MARKER.mark(exercise, with(right, part, typed)).parts().get(part);
    assertThat(mark.verdict()).as("%s %s", exercise.key(), mark).isEqualTo(MarkVerdict.RIGHT);
    assertThat(mark.isFull()).as("%s", mark).isTrue();
    assertThat(mark.mistake()).as("%s", mark).isEmpty();
    assertThat(mark.carriedForward()).as("%s", mark).isFalse();
  }

  private static void isSlip(
      Exercise exercise, List<String> right, int part, TypicalSlip slip, String typed) {
    var mark = MARKER.mark(exercise, with(right, part, typed)).parts().get(part);
    assertThat(mark.verdict())
        .as("%s %s %s", exercise.key(), slip, mark)
        .isEqualTo(MarkVerdict.MISTAKE);
    assertThat(mark.mistake()).as("%s %s", exercise.key(), mark).contains(slip.mistake());
    assertThat(mark.marks()).isZero();
  }

  /** A student who slips in one part and goes on rightly from there gets all the other marks. */
  private static void isCarried(Exercise exercise, List<String> right, int part, TypicalSlip slip) {
    var typed = new ArrayList<>(right.subList(0, part));
    var words = exercise.context().words();
    var own = solvedFrom(exercise, part, slip.answer());
    if (own.isEmpty()) {
      return;
    }
    typed.add(slip.answer().print(words));
    own.get().forEach(later -> typed.add(later.answer().print(words)));
    var marks = MARKER.mark(exercise, typed).parts();
    for (int later = part + 1; later < marks.size(); later++) {
      assertThat(marks.get(later).isFull())
          .as("%s %s %s %s", exercise.key(), slip, typed, marks.get(later))
          .isTrue();
    }
  }

  /** The parts behind one, solved from its slip; nothing if nothing comes of it. */
  private static Optional<List<SolvedPart>> solvedFrom(
      Exercise exercise, int part, ExpectedAnswer own) {
    var earlier = EarlierAnswers.none();
    var later = new ArrayList<SolvedPart>();
    try {
      for (int i = 0; i < exercise.parts().size(); i++) {
        var solved = exercise.parts().get(i).solution().solve(earlier);
        earlier = earlier.and(i == part ? own.value() : solved.answer().value());
        if (i > part) {
          later.add(solved);
        }
      }
    } catch (IllegalArgumentException | ArithmeticException nothing) {
      return Optional.empty();
    }
    return Optional.of(later);
  }

  private static String allDigits(ExpectedAnswer answer, CourseWords words) {
    return inUnit(answer)
        .map(unit -> (words.exact(AnswerNumbers.number(answer).orElseThrow()) + " " + unit).strip())
        .orElseGet(() -> answer.print(words));
  }

  /** The unit behind the number; nothing for answers without a number. */
  private static Optional<String> inUnit(ExpectedAnswer answer) {
    return AnswerNumbers.number(answer).equals(OptionalDouble.empty())
        ? Optional.empty()
        : Optional.of(AnswerNumbers.symbol(answer));
  }

  private static List<String> notations(ExpectedAnswer answer, CourseWords words) {
    var printed = answer.print(words);
    var all = new ArrayList<>(List.of(" " + printed + " ", "x = " + printed, printed + "."));
    all.add(allDigits(answer, words));
    if (answer instanceof DayAnswer day) {
      all.add(day.day().toString());
      all.add(day.day().getDayOfMonth() + "." + day.day().getMonthValue() + ".");
    } else if (answer instanceof ChoiceAnswer choice) {
      all.clear();
      int index =
          choice.choices().stream()
              .map(ChoiceAnswer.AnswerChoice::code)
              .toList()
              .indexOf(choice.code());
      all.add(Exercise.letter(index));
      all.add(printed.toUpperCase(java.util.Locale.ROOT) + " ");
    } else if (answer instanceof CodesAnswer codes) {
      all.clear();
      var order = List.copyOf(new TreeSet<>(codes.codes()).descendingSet());
      all.add(order.isEmpty() ? "none" : String.join(" & ", order));
    } else {
      all.add("≈ " + printed.replace(' ', '\u00a0'));
      all.addAll(otherUnits(answer, words));
    }
    return all;
  }

  private static List<String> otherUnits(ExpectedAnswer answer, CourseWords words) {
    if (answer instanceof MeasuredAnswer<?> measured
        && measured.quantity() instanceof Volume volume) {
      return List.of(
          words.number(volume.in(VolumeUnit.LITRE)) + " l",
          words.number(volume.in(VolumeUnit.MILLILITRE)) + "cc",
          words.number(volume.in(VolumeUnit.US_FLUID_OUNCE)) + " fl oz (US)");
    }
    if (answer instanceof ThermalTimeAnswer sum) {
      return List.of(words.number(sum.sum().degreeDaysC()) + " °Cd");
    }
    if (answer instanceof TemperatureAnswer temperature) {
      return List.of(words.exact(temperature.temperature().celsius()) + " °C");
    }
    return List.of();
  }
}
