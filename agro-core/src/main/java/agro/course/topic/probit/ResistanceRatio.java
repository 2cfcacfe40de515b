package agro.course.topic.probit;

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
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.source.Reference;
import agro.units.MassPerVolume;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How many times the dose of a susceptible population a field population needs. */
final class ResistanceRatio implements ExerciseType {

  @Override
  public String code() {
    return "probit-resistance";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.PROBIT;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(ProbitMistake.RATIO_UPSIDE_DOWN, ProbitMistake.DIFFERENCE_FOR_RATIO);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    double susceptible = draw.sensible(0.3, 8, 2);
    double ratio = draw.sensible(1.5, 40, 2);
    double field = draw.sensible(0.9 * susceptible * ratio, 1.1 * susceptible * ratio, 3);
    var place = draw.oneOf(context.setting().fields());
    var pest = draw.oneOf(context.setting().pests());
    var words = ProbitExercises.words(context.words());
    return ExerciseBody.titled(words.say("resistance.title"))
        .story(
            words.say(
                "resistance.story",
                "pest",
                pest,
                "field",
                place,
                "fieldDose",
                words.exact(field) + " " + ProbitExercises.UNIT.symbol(),
                "susceptibleDose",
                words.exact(susceptible) + " " + ProbitExercises.UNIT.symbol()))
        .givens(Givens.none().withNumber("field", field).withNumber("susceptible", susceptible))
        .part(words.say("resistance.question"), earlier -> solve(field, susceptible, words))
        .source(Reference.commonPractice("A resistance ratio is a quotient of lethal doses"))
        .build();
  }

  private static SolvedPart solve(double field, double susceptible, CourseWords words) {
    double ratio =
        MassPerVolume.of(field, ProbitExercises.UNIT)
            .ratioTo(MassPerVolume.of(susceptible, ProbitExercises.UNIT));
    return new SolvedPart(
        NumberAnswer.rounded(ratio, 1, words.say("resistance.times"), words.say("resistance.fold")),
        Working.of(words.say("resistance.title"))
            .step(
                words.say("resistance.step"),
                words.say("resistance.formula"),
                words.exact(field) + " / " + words.exact(susceptible),
                words.number(ratio, 1)),
        List.of(
            new TypicalSlip(ProbitMistake.RATIO_UPSIDE_DOWN, NumberAnswer.rounded(1 / ratio, 1)),
            new TypicalSlip(
                ProbitMistake.DIFFERENCE_FOR_RATIO, NumberAnswer.rounded(field - susceptible, 1))));
  }
}
