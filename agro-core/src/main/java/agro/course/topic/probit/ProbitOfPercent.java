package agro.course.topic.probit;

import agro.course.AnswerTolerance;
import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.ExamAid;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.course.handwork.HandProbit;
import agro.course.sheet.ProbitLine;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The probit of a mortality, by the printed table. */
final class ProbitOfPercent implements ExerciseType {

  @Override
  public String code() {
    return "probit-transform";
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
    return Set.of(ProbitMistake.FORGOT_FIVE, ProbitMistake.PROBIT_OF_SURVIVORS);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    double percent = draw.step(3, 97, 1);
    double dose = draw.sensible(0.5, 60, 2);
    var pest = draw.oneOf(context.setting().pests());
    var words = ProbitExercises.words(context.words());
    return ExerciseBody.titled(words.say("transform.title"))
        .story(
            words.say(
                "transform.story",
                "pest",
                pest,
                "dose",
                words.exact(dose) + " " + ProbitExercises.UNIT.symbol(),
                "percent",
                words.exact(percent)))
        .givens(Givens.none().withNumber("percent", percent).withNumber("dose", dose))
        .part(words.say("transform.question"), earlier -> solve(percent, words))
        .aid(ExamAid.PROBIT_TABLE)
        .source(HandProbit.textbook())
        .build();
  }

  private static SolvedPart solve(double percent, CourseWords words) {
    double probit = ProbitLine.probit(percent);
    return new SolvedPart(
        answer(probit),
        Working.of(words.say("transform.title"))
            .step(
                words.say("step.table"),
                words.say("formula.probit"),
                "z(" + words.exact(percent) + " %) + 5",
                words.number(probit, 2)),
        List.of(
            new TypicalSlip(ProbitMistake.FORGOT_FIVE, answer(probit - ProbitLine.HALF)),
            new TypicalSlip(
                ProbitMistake.PROBIT_OF_SURVIVORS, answer(ProbitLine.probit(100 - percent)))));
  }

  /** One unit of the second decimal, since the table is read between its columns. */
  private static NumberAnswer answer(double probit) {
    return new NumberAnswer(probit, 2, AnswerTolerance.table(0.011), List.of());
  }
}
