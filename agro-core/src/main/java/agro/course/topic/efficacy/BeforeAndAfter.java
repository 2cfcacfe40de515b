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
import agro.course.NumberAnswer;
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.trial.efficacy.EfficacyFormula;
import agro.trial.efficacy.LiveCounts;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** Counts before and after on treated and control: the two changes, then the efficacy. */
final class BeforeAndAfter implements ExerciseType {

  private static final EfficacyFormula FORMULA = EfficacyFormula.HENDERSON_TILTON;

  @Override
  public String code() {
    return "efficacy-before-after";
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
        EfficacyMistake.RATIO_UPSIDE_DOWN,
        EfficacyMistake.GONE_FOR_LEFT,
        EfficacyMistake.OTHER_PLOT,
        EfficacyMistake.CONTROL_LEFT_OUT,
        EfficacyMistake.BEFORE_LEFT_OUT,
        EfficacyMistake.SURVIVORS_GIVEN);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    int controlBefore = draw.whole(60, 200);
    int controlAfter = (int) (controlBefore * draw.step(0.6, 1.8, 0.05));
    int treatedBefore = draw.whole(60, 200);
    int treatedAfter = draw.whole(5, treatedBefore / 3);
    var field = draw.oneOf(context.setting().fields());
    var pest = draw.oneOf(context.setting().pests());
    var words = EfficacyExercises.words(context.words());
    return ExerciseBody.titled(words.say("before.title"))
        .story(
            words.say(
                "before.story",
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
            words.say("before.question.treated"),
            earlier -> ratio(treatedAfter, treatedBefore, OptionalInt.of(controlAfter), words))
        .part(
            words.say("before.question.control"),
            earlier -> ratio(controlAfter, controlBefore, OptionalInt.empty(), words))
        .part(
            words.say("question.efficacy", "formula", FORMULA.title()),
            2,
            earlier ->
                efficacy(
                    earlier.number(0),
                    earlier.number(1),
                    (double) treatedAfter / controlAfter,
                    words))
        .source(FORMULA.source())
        .build();
  }

  /** What is left on a plot; for the treated one with the later count of the other plot. */
  private static SolvedPart ratio(
      double after, double before, OptionalInt otherAfter, CourseWords words) {
    var slips = new ArrayList<TypicalSlip>();
    slips.add(
        new TypicalSlip(
            EfficacyMistake.RATIO_UPSIDE_DOWN, NumberAnswer.rounded(before / after, 3)));
    if (after < before) {
      slips.add(
          new TypicalSlip(
              EfficacyMistake.GONE_FOR_LEFT, NumberAnswer.rounded(1 - after / before, 3)));
    }
    otherAfter.ifPresent(
        other ->
            slips.add(
                new TypicalSlip(
                    EfficacyMistake.OTHER_PLOT, NumberAnswer.rounded(after / other, 3))));
    boolean treated = otherAfter.isPresent();
    return new SolvedPart(
        NumberAnswer.rounded(after / before, 3),
        Working.of(words.say("before.title"))
            .step(
                words.say(treated ? "step.left.treated" : "step.left.control"),
                words.say("formula.left"),
                words.exact(after) + " / " + words.exact(before),
                words.number(after / before)),
        slips);
  }

  /** The formula of counts, fed with the shares that are left of one animal before. */
  private static SolvedPart efficacy(
      double treatedLeft, double controlLeft, double afterOnly, CourseWords words) {
    double percent = FORMULA.percent(LiveCounts.of(1, treatedLeft, 1, controlLeft));
    return new SolvedPart(
        PercentAnswer.rounded(percent, 1),
        Working.of(words.say("before.title"))
            .step(
                words.say("step.efficacy", "formula", FORMULA.title()),
                words.say("formula.henderson"),
                "(1 − " + words.number(treatedLeft) + " / " + words.number(controlLeft) + ") · 100",
                words.number(percent) + " %"),
        List.of(
            new TypicalSlip(
                EfficacyMistake.CONTROL_LEFT_OUT,
                PercentAnswer.rounded(100 * (1 - treatedLeft), 1)),
            new TypicalSlip(
                EfficacyMistake.BEFORE_LEFT_OUT, PercentAnswer.rounded(100 * (1 - afterOnly), 1)),
            new TypicalSlip(
                EfficacyMistake.SURVIVORS_GIVEN, PercentAnswer.rounded(100 - percent, 1))));
  }
}
