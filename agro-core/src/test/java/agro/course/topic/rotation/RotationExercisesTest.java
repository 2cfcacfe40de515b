package agro.course.topic.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.course.AnswerValue;
import agro.course.CodesAnswer;
import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.DayAnswer;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.Exercise;
import agro.course.ExerciseContract;
import agro.course.ExerciseKey;
import agro.course.ExerciseType;
import agro.course.ExpectedAnswer;
import agro.course.GeneratorVersion;
import agro.course.MeasuredAnswer;
import agro.course.NumberAnswer;
import agro.dose.ActiveAmount;
import agro.dose.ActivePerArea;
import agro.dose.ContentByVolume;
import agro.dose.DoseLimit;
import agro.dose.LabelLimits;
import agro.dose.LimitScope;
import agro.programme.ActiveCap;
import agro.programme.LabelActive;
import agro.programme.LabelRecord;
import agro.programme.interval.SeasonQuestions;
import agro.programme.interval.SeasonRules;
import agro.units.LandUnit;
import agro.units.MassPerArea;
import agro.units.MassPerVolume;
import agro.units.MassUnit;
import agro.units.VolumePerArea;
import agro.working.TextLanguage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RotationExercisesTest {

  static Stream<ExerciseType> types() {
    return RotationExercises.first().stream();
  }

  @ParameterizedTest
  @MethodSource("types")
  void everyTypeKeepsTheContract(ExerciseType type) {
    ExerciseContract.holds(type, RotationRoutes.ALL.get(type.code()));
    assertThat(ExerciseContract.mistakesMet(type)).isEqualTo(type.mistakes());
  }

  @Tag("slow")
  @ParameterizedTest
  @MethodSource("types")
  void everyTypeKeepsTheContractOverAThousandSeeds(ExerciseType type) {
    ExerciseContract.holdsForAThousand(type, RotationRoutes.ALL.get(type.code()));
  }

  @Test
  void everyMistakeBelongsToAType() {
    var named = new HashSet<>();
    types().forEach(type -> named.addAll(type.mistakes()));
    assertThat(named).isEqualTo(EnumSet.allOf(RotationMistake.class));
  }

  @Test
  void bothLanguagesHaveTheSameKeys() {
    ExerciseContract.sameKeys(RotationExercises.class, "rotation");
  }

  @ParameterizedTest
  @MethodSource("types")
  void localLandUnitsAreSensibleToo(ExerciseType type) {
    var units = CourseUnits.METRIC.withLand(LandUnit.RAI);
    for (var difficulty : type.difficulties()) {
      for (int seed = 0; seed < 20; seed++) {
        for (var part : set(type, difficulty, seed, units).solution()) {
          assertThat(part.slips()).isNotEmpty();
          if (part.answer() instanceof MeasuredAnswer<?> measured) {
            assertThat(measured.number()).isGreaterThan(0.5).isLessThan(20_000);
          }
        }
      }
    }
  }

  @Test
  void aWrongLastDayIsCarriedForward() {
    var exercise = set(new HarvestAndEntry(), Difficulty.ROUTINE, 4, CourseUnits.METRIC);
    var own = LocalDate.of(2027, 6, 28);
    var day = ((DayAnswer) carried(exercise, 1, new AnswerValue.OfDay(own))).day();
    long days = (long) (exercise.givens().number("late") + exercise.givens().number("harvest"));
    assertThat(day.toEpochDay()).isEqualTo(own.toEpochDay() + days);
  }

  @Test
  void wrongGroupsAreCarriedForward() {
    var exercise = set(new GroupsForWindow(), Difficulty.ROUTINE, 4, CourseUnits.METRIC);
    var none = new AnswerValue.OfCodes(Set.of());
    assertThat(((CodesAnswer) carried(exercise, 1, none)).codes()).isEmpty();
  }

  @Test
  void wrongNumbersAreCarriedForward() {
    var exercise = set(new SpraysOfSeason(), Difficulty.DEMANDING, 2, CourseUnits.METRIC);
    var answer = carried(exercise, 2, new AnswerValue.OfNumber(9), new AnswerValue.OfNumber(11));
    assertThat(((NumberAnswer) answer).number())
        .isEqualTo(11 + Math.min(9, exercise.givens().number("mostB")));
  }

  /** What the adviser's own ledger of an active ingredient leaves over both products. */
  @Test
  void theAdvisersLedgerLeavesAsMuchActiveIngredient() {
    for (int seed = 0; seed < 40; seed++) {
      var exercise = set(new ActiveOfSeason(), Difficulty.DEMANDING, seed, CourseUnits.METRIC);
      var givens = exercise.givens();
      var maximum = givens.quantity("maximum", MassPerArea.class);
      var cap =
          ActivePerArea.ofHectare(
              ActiveAmount.of(1000 * maximum.kilogramsPerHectare(), MassUnit.GRAM));
      var limit = new ActiveCap("x", DoseLimit.maximum(cap).per(LimitScope.SEASON));
      var labels =
          List.of(
              label("A", givens.quantity("content", MassPerVolume.class)).withCaps(limit),
              label("B", givens.quantity("otherContent", MassPerVolume.class)));
      var sprays = new ArrayList<agro.programme.Spraying>();
      for (int i = 0; i < givens.number("sprays"); i++) {
        var dose = givens.quantity("dose", VolumePerArea.class);
        sprays.add(LabelledField.spray("a" + i, LabelledField.day(10 * i), "A", dose));
      }
      var other = givens.quantity("otherDose", VolumePerArea.class);
      sprays.add(LabelledField.spray("b", LabelledField.day(5), "B", other));
      var line =
          SeasonQuestions.of(SeasonRules.of(LabelledField.programme(labels).withSprayings(sprays)))
              .howMuchIsLeft(LabelledField.FIELD, "A", LabelledField.day(60))
              .lines()
              .get(0);
      var ours = (MeasuredAnswer<?>) exercise.solution().get(1).answer();
      assertThat(ours.number()).isCloseTo(1000 * line.number(), within(1e-6));
    }
  }

  private static LabelRecord label(String product, MassPerVolume content) {
    return LabelRecord.of(
        product,
        LabelledField.CROP,
        LabelLimits.of(product),
        new LabelActive("x", Optional.of("28"), Optional.of(new ContentByVolume(content))));
  }

  private static ExpectedAnswer carried(Exercise exercise, int part, AnswerValue... earlier) {
    var answers = EarlierAnswers.none();
    for (var one : earlier) {
      answers = answers.and(one);
    }
    return exercise.parts().get(part).solution().solve(answers).answer();
  }

  private static Exercise set(
      ExerciseType type, Difficulty difficulty, long seed, CourseUnits units) {
    var words = CourseWords.of(TextLanguage.ENGLISH);
    var setting = CourseSetting.osmereVale(TextLanguage.ENGLISH).withUnits(units);
    var key = new ExerciseKey(type.code(), difficulty, GeneratorVersion.FIRST, seed);
    return Exercise.set(type, key, new CourseContext(setting, words, false));
  }
}
