package agro.course;

import static org.assertj.core.api.Assertions.assertThat;

import agro.units.LandUnit;
import agro.units.Numbers;
import agro.units.Quantity;
import agro.working.TextLanguage;
import java.util.List;

/** What holds for a student who rounds every answer as asked and reckons on with it. */
public final class RoundedSteps {

  private static final int SEEDS = 40;
  private static final int DIGITS = 4;

  private RoundedSteps() {}

  /** Each rounded answer is right, on fields of hectares and of a few steps, in any currency. */
  public static void leadToRightAnswers(ExerciseType type) {
    var local = CourseUnits.METRIC.withLand(LandUnit.GUNTHA);
    var small = CourseUnits.US.withLand(LandUnit.MARLA_LAHORE);
    for (var units : List.of(CourseUnits.METRIC, CourseUnits.US, local, small)) {
      var language = TextLanguage.ENGLISH;
      var vale = CourseSetting.osmereVale(language);
      var setting =
          new CourseSetting(vale.place(), vale.fields(), vale.crops(), vale.pests(), "¤", units);
      var context = new CourseContext(setting, CourseWords.of(language), true);
      for (var difficulty : type.difficulties()) {
        for (int seed = 0; seed < SEEDS; seed++) {
          var key = new ExerciseKey(type.code(), difficulty, GeneratorVersion.FIRST, seed);
          follow(Exercise.set(type, key, context));
        }
      }
    }
  }

  private static void follow(Exercise exercise) {
    var solution = exercise.solution();
    var earlier = EarlierAnswers.none();
    for (int i = 0; i < solution.size(); i++) {
      var own = exercise.parts().get(i).solution().solve(earlier).answer();
      var rounded = rounded(own);
      assertThat(solution.get(i).answer().accepts(rounded))
          .as(exercise.key() + " " + Exercise.letter(i) + " " + rounded)
          .isTrue();
      earlier = earlier.and(rounded);
    }
  }

  private static AnswerValue rounded(ExpectedAnswer answer) {
    if (answer instanceof NumberAnswer number) {
      return fixed(number.number(), number.decimals());
    }
    if (answer instanceof PercentAnswer percent) {
      return fixed(percent.percent(), percent.decimals());
    }
    return answer instanceof MeasuredAnswer<?> measured ? measured(measured) : answer.value();
  }

  private static AnswerValue fixed(double number, int decimals) {
    return new AnswerValue.OfNumber(Double.parseDouble(Numbers.fixed(number, decimals)));
  }

  private static <Q extends Quantity<Q>> AnswerValue measured(MeasuredAnswer<Q> answer) {
    double rounded = Double.parseDouble(Numbers.significant(answer.number(), DIGITS));
    return new AnswerValue.OfQuantity(
        answer.quantity().withBaseValue(answer.unit().toBase(rounded)));
  }
}
