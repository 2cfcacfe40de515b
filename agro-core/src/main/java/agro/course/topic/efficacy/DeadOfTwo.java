package agro.course.topic.efficacy;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.trial.efficacy.EfficacyFormula;
import agro.trial.efficacy.MortalityPair;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Mortality of treated and control, then the efficacy corrected for the control. */
final class DeadOfTwo implements ExerciseType {

  private static final EfficacyFormula FORMULA = EfficacyFormula.SCHNEIDER_ORELLI;

  @Override
  public String code() {
    return "efficacy-dead";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.EFFICACY;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        EfficacyMistake.SURVIVORS_GIVEN,
        EfficacyMistake.DEAD_PER_LIVING,
        EfficacyMistake.NOT_CORRECTED,
        EfficacyMistake.ONLY_SUBTRACTED);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    int treatedTotal = 5 * draw.whole(12, 40);
    int controlTotal = 5 * draw.whole(12, 40);
    int treatedDead = draw.whole(treatedTotal * 6 / 10, treatedTotal * 97 / 100);
    int controlDead = draw.whole(controlTotal * 4 / 100 + 1, controlTotal * 18 / 100);
    var pest = draw.oneOf(context.setting().pests());
    var crop = draw.oneOf(context.setting().crops());
    var words = EfficacyExercises.words(context.words());
    return ExerciseBody.titled(words.say("dead.title"))
        .story(
            words.say(
                "dead.story",
                "pest",
                pest,
                "crop",
                crop,
                "treatedTotal",
                treatedTotal,
                "treatedDead",
                treatedDead,
                "controlTotal",
                controlTotal,
                "controlDead",
                controlDead))
        .givens(
            Givens.none()
                .withNumber("treatedTotal", treatedTotal)
                .withNumber("treatedDead", treatedDead)
                .withNumber("controlTotal", controlTotal)
                .withNumber("controlDead", controlDead))
        .part(
            words.say("dead.question.treated"),
            earlier -> mortality(treatedDead, treatedTotal, true, words))
        .part(
            words.say("dead.question.control"),
            earlier -> mortality(controlDead, controlTotal, false, words))
        .part(
            words.say("question.efficacy", "formula", FORMULA.title()),
            2,
            earlier -> corrected(earlier.number(0), earlier.number(1), words))
        .source(FORMULA.source())
        .build();
  }

  private static SolvedPart mortality(
      double dead, double total, boolean treated, CourseWords words) {
    var pair = MortalityPair.ofDead(dead, total, dead, total);
    double percent = pair.treatedPercent();
    return new SolvedPart(
        PercentAnswer.rounded(percent, 1),
        Working.of(words.say("dead.title"))
            .step(
                words.say(treated ? "step.mortality.treated" : "step.mortality.control"),
                words.say("formula.mortality"),
                words.exact(dead) + " / " + words.exact(total) + " · 100",
                words.number(percent) + " %"),
        List.of(
            new TypicalSlip(
                EfficacyMistake.SURVIVORS_GIVEN, PercentAnswer.rounded(100 - percent, 1)),
            new TypicalSlip(
                EfficacyMistake.DEAD_PER_LIVING,
                PercentAnswer.rounded(100 * dead / (total - dead), 1))));
  }

  private static SolvedPart corrected(double treated, double control, CourseWords words) {
    double percent = FORMULA.percent(new MortalityPair(treated, control));
    return new SolvedPart(
        PercentAnswer.rounded(percent, 1),
        Working.of(words.say("dead.title"))
            .step(
                words.say("step.efficacy", "formula", FORMULA.title()),
                FORMULA.form(),
                "("
                    + words.number(treated)
                    + " − "
                    + words.number(control)
                    + ") / (100 − "
                    + words.number(control)
                    + ") · 100",
                words.number(percent) + " %"),
        List.of(
            new TypicalSlip(EfficacyMistake.NOT_CORRECTED, PercentAnswer.rounded(treated, 1)),
            new TypicalSlip(
                EfficacyMistake.ONLY_SUBTRACTED, PercentAnswer.rounded(treated - control, 1))));
  }
}
