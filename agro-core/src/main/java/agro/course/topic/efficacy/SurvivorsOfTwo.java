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
import java.util.Set;

/** Efficacy from the survivors of a treated and an untreated plot. */
final class SurvivorsOfTwo implements ExerciseType {

  @Override
  public String code() {
    return "efficacy-survivors";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.EFFICACY;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        EfficacyMistake.SURVIVORS_GIVEN,
        EfficacyMistake.DIVIDED_BY_TREATED,
        EfficacyMistake.DIFFERENCE_AS_PERCENT);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    int control = draw.whole(40, 180);
    int treated = draw.whole(5, control / 2);
    var field = draw.oneOf(context.setting().fields());
    var pest = draw.oneOf(context.setting().pests());
    var words = EfficacyExercises.words(context.words());
    return ExerciseBody.titled(words.say("survivors.title"))
        .story(
            words.say(
                "survivors.story",
                "field",
                field,
                "pest",
                pest,
                "control",
                control,
                "treated",
                treated))
        .givens(Givens.none().withNumber("treated", treated).withNumber("control", control))
        .part(
            words.say("question.efficacy", "formula", EfficacyFormula.ABBOTT.title()),
            earlier -> solve(treated, control, words))
        .source(EfficacyFormula.ABBOTT.source())
        .build();
  }

  private static SolvedPart solve(double treated, double control, CourseWords words) {
    double percent = EfficacyFormula.ABBOTT.percent(LiveCounts.after(treated, control));
    var slips = new ArrayList<TypicalSlip>();
    slips.add(
        new TypicalSlip(EfficacyMistake.SURVIVORS_GIVEN, PercentAnswer.rounded(100 - percent, 1)));
    slips.add(
        new TypicalSlip(
            EfficacyMistake.DIVIDED_BY_TREATED,
            PercentAnswer.rounded(100 * (control - treated) / treated, 1)));
    if (control - treated < 100) {
      slips.add(
          new TypicalSlip(
              EfficacyMistake.DIFFERENCE_AS_PERCENT, PercentAnswer.rounded(control - treated, 1)));
    }
    return new SolvedPart(
        PercentAnswer.rounded(percent, 1),
        Working.of(words.say("survivors.title"))
            .step(
                words.say("step.efficacy", "formula", EfficacyFormula.ABBOTT.title()),
                EfficacyFormula.ABBOTT.form(),
                "(1 − " + words.exact(treated) + " / " + words.exact(control) + ") · 100",
                words.number(percent) + " %"),
        slips);
  }
}
