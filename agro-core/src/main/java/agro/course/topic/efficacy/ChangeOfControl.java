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
import agro.trial.efficacy.LiveCounts;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Mortality on the treated corrected by the change of the control, which may rise or fall. */
final class ChangeOfControl implements ExerciseType {

  private static final EfficacyFormula FORMULA = EfficacyFormula.SUN_SHEPARD;

  @Override
  public String code() {
    return "efficacy-change";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.EFFICACY;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        EfficacyMistake.SURVIVORS_GIVEN,
        EfficacyMistake.OTHER_PLOT,
        EfficacyMistake.DIVIDED_BY_LATER,
        EfficacyMistake.SIGN_OF_CHANGE,
        EfficacyMistake.NOT_CORRECTED,
        EfficacyMistake.ONLY_SUBTRACTED);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    int controlBefore = draw.whole(50, 160);
    int controlAfter = (int) (controlBefore * draw.step(0.7, 1.7, 0.05));
    int treatedBefore = draw.whole(50, 160);
    int treatedAfter = draw.whole(4, treatedBefore / 3);
    var field = draw.oneOf(context.setting().fields());
    var pest = draw.oneOf(context.setting().pests());
    var words = EfficacyExercises.words(context.words());
    return ExerciseBody.titled(words.say("change.title"))
        .story(
            words.say(
                "change.story",
                "field",
                field,
                "pest",
                pest,
                "controlBefore",
                controlBefore,
                "controlAfter",
                controlAfter,
                "treatedBefore",
                treatedBefore,
                "treatedAfter",
                treatedAfter))
        .givens(
            Givens.none()
                .withNumber("treatedBefore", treatedBefore)
                .withNumber("treatedAfter", treatedAfter)
                .withNumber("controlBefore", controlBefore)
                .withNumber("controlAfter", controlAfter))
        .part(
            words.say("change.question.treated"),
            earlier -> loss(treatedAfter, treatedBefore, controlAfter, words))
        .part(
            words.say("change.question.control"),
            earlier -> change(controlAfter, controlBefore, words))
        .part(
            words.say("question.efficacy", "formula", FORMULA.title()),
            2,
            earlier -> corrected(earlier.number(0), earlier.number(1), words))
        .source(FORMULA.source())
        .build();
  }

  private static SolvedPart loss(
      double after, double before, double otherAfter, CourseWords words) {
    double percent = 100 * (before - after) / before;
    return new SolvedPart(
        PercentAnswer.rounded(percent, 1),
        Working.of(words.say("change.title"))
            .step(
                words.say("step.mortality.treated"),
                "M = (Tb − Ta) / Tb · 100",
                fraction(before, after, before, words),
                words.number(percent) + " %"),
        List.of(
            new TypicalSlip(
                EfficacyMistake.SURVIVORS_GIVEN, PercentAnswer.rounded(100 - percent, 1)),
            new TypicalSlip(
                EfficacyMistake.OTHER_PLOT,
                PercentAnswer.rounded(100 * (otherAfter - after) / otherAfter, 1))));
  }

  private static SolvedPart change(double after, double before, CourseWords words) {
    double percent = 100 * (after - before) / before;
    return new SolvedPart(
        PercentAnswer.rounded(percent, 1),
        Working.of(words.say("change.title"))
            .step(
                words.say("step.change.control"),
                "Δ = (Ca − Cb) / Cb · 100",
                fraction(after, before, before, words),
                words.number(percent) + " %"),
        List.of(
            new TypicalSlip(EfficacyMistake.SIGN_OF_CHANGE, PercentAnswer.rounded(-percent, 1)),
            new TypicalSlip(
                EfficacyMistake.DIVIDED_BY_LATER,
                PercentAnswer.rounded(100 * (after - before) / after, 1))));
  }

  private static String fraction(double from, double less, double below, CourseWords words) {
    return "("
        + words.exact(from)
        + " − "
        + words.exact(less)
        + ") / "
        + words.exact(below)
        + " · 100";
  }

  /** The formula of counts, for 100 animals before on each side. */
  private static SolvedPart corrected(double loss, double change, CourseWords words) {
    double percent = FORMULA.percent(LiveCounts.of(100, 100 - loss, 100, 100 + change));
    var slips = new ArrayList<TypicalSlip>();
    slips.add(new TypicalSlip(EfficacyMistake.NOT_CORRECTED, PercentAnswer.rounded(loss, 1)));
    if (change < 100) {
      slips.add(
          new TypicalSlip(
              EfficacyMistake.SIGN_OF_CHANGE,
              PercentAnswer.rounded(100 * (loss - change) / (100 - change), 1)));
    }
    if (loss + change <= 100) {
      slips.add(
          new TypicalSlip(
              EfficacyMistake.ONLY_SUBTRACTED, PercentAnswer.rounded(loss + change, 1)));
    }
    return new SolvedPart(
        PercentAnswer.rounded(percent, 1),
        Working.of(words.say("change.title"))
            .step(
                words.say("step.efficacy", "formula", FORMULA.title()),
                "E = (M + Δ) / (100 + Δ) · 100",
                "("
                    + words.number(loss)
                    + sum(change, words)
                    + ") / (100"
                    + sum(change, words)
                    + ") · 100",
                words.number(percent) + " %"),
        slips);
  }

  private static String sum(double change, CourseWords words) {
    return (change < 0 ? " − " : " + ") + words.number(Math.abs(change));
  }
}
