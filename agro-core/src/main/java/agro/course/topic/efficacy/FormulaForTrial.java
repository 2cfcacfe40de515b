package agro.course.topic.efficacy;

import agro.course.ChoiceAnswer;
import agro.course.ChoiceAnswer.AnswerChoice;
import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.trial.efficacy.EfficacyFormula;
import agro.trial.efficacy.EfficacyFormula.Measure;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Which formula suits what was counted. */
final class FormulaForTrial implements ExerciseType {

  /** Sun-Shepard gives what Henderson-Tilton gives, so that nobody could choose between the two. */
  private static final List<EfficacyFormula> FORMULAS =
      List.of(
          EfficacyFormula.ABBOTT,
          EfficacyFormula.SCHNEIDER_ORELLI,
          EfficacyFormula.HENDERSON_TILTON);

  /** What was counted in a trial; only one of the formulas takes it as it is. */
  private enum Trial {
    SURVIVORS_EVEN(EfficacyFormula.ABBOTT, "survivors"),
    DEAD_EVEN(EfficacyFormula.SCHNEIDER_ORELLI, "dead"),
    BEFORE_UNEVEN(EfficacyFormula.HENDERSON_TILTON, "counts");

    private final EfficacyFormula formula;
    private final String counted;

    Trial(EfficacyFormula formula, String counted) {
      this.formula = formula;
      this.counted = counted;
    }
  }

  @Override
  public String code() {
    return "efficacy-formula";
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
        EfficacyMistake.NEEDS_EVEN_PLOTS,
        EfficacyMistake.NEEDS_BEFORE,
        EfficacyMistake.WRONG_MEASURE);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var trial = draw.oneOf(List.of(Trial.values()));
    int animals = draw.whole(40, 400);
    int blocks = draw.whole(3, 6);
    var order = draw.some(FORMULAS, FORMULAS.size());
    var field = draw.oneOf(context.setting().fields());
    var pest = draw.oneOf(context.setting().pests());
    var words = EfficacyExercises.words(context.words());
    var choices = order.stream().map(formula -> choice(formula, words)).toList();
    return ExerciseBody.titled(words.say("formula.title"))
        .story(
            words.say(
                "formula.story." + trial.counted,
                "field",
                field,
                "pest",
                pest,
                "animals",
                animals,
                "blocks",
                blocks))
        .givens(
            Givens.none()
                .withText("trial", trial.counted)
                .withNumber("animals", animals)
                .withNumber("blocks", blocks))
        .part(words.say("formula.question"), earlier -> solve(trial, choices, words))
        .source(trial.formula.source())
        .build();
  }

  private static AnswerChoice choice(EfficacyFormula formula, CourseWords words) {
    return new AnswerChoice(
        formula.name().toLowerCase(Locale.ROOT),
        words.say("formula.choice." + formula.name(), "formula", formula.title()));
  }

  private static SolvedPart solve(Trial trial, List<AnswerChoice> choices, CourseWords words) {
    var right = new ChoiceAnswer(choices, trial.formula.name().toLowerCase(Locale.ROOT));
    var slips = new ArrayList<TypicalSlip>();
    for (var formula : FORMULAS) {
      mistake(trial, formula)
          .ifPresent(
              mistake ->
                  slips.add(
                      new TypicalSlip(
                          mistake, right.withCode(formula.name().toLowerCase(Locale.ROOT)))));
    }
    return new SolvedPart(
        right,
        Working.of(words.say("formula.title"))
            .step(words.say("step.choose"), "", "", words.say("formula.reason." + trial.counted)),
        slips);
  }

  /** Why another formula does not suit; nothing for the right one. */
  private static Optional<Mistake> mistake(Trial trial, EfficacyFormula formula) {
    if (formula == trial.formula) {
      return Optional.empty();
    }
    if (formula.needsBefore()) {
      return Optional.of(EfficacyMistake.NEEDS_BEFORE);
    }
    if (trial.formula.needsBefore() && formula.measure() != Measure.MORTALITY) {
      return Optional.of(EfficacyMistake.NEEDS_EVEN_PLOTS);
    }
    return Optional.of(EfficacyMistake.WRONG_MEASURE);
  }
}
