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
import agro.course.sheet.WorkingProbit;
import agro.units.Numbers;
import agro.working.Working;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** One row of the calculation by hand: expected probit, weight, working probit. */
final class WorkingProbitRow implements ExerciseType {

  @Override
  public String code() {
    return "probit-working";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.PROBIT;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        ProbitMistake.DOSE_NOT_LOGGED,
        ProbitMistake.NATURAL_LOG,
        ProbitMistake.WEIGHT_WITHOUT_NUMBER,
        ProbitMistake.DEAD_FOR_TESTED,
        ProbitMistake.LEAST_GIVEN,
        ProbitMistake.PROBIT_OF_SURVIVORS,
        ProbitMistake.FORGOT_FIVE);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    double slope = draw.step(1.5, 3.5, 0.1);
    double dose = draw.sensible(1.5, 30, 2);
    double wanted = draw.step(4, 6.2, 0.1);
    double intercept =
        Double.parseDouble(Numbers.fixed(wanted - slope * StrictMath.log10(dose), 2));
    int animals = draw.whole(20, 60);
    double chance = ProbitLine.percent(wanted) / 100;
    int dead = Math.min(animals - 1, Math.max(1, draw.binomial(animals, chance)));
    var pest = draw.oneOf(context.setting().pests());
    var words = ProbitExercises.words(context.words());
    var line = new ProbitLine(intercept, slope);
    double share = (double) dead / animals;
    return ExerciseBody.titled(words.say("working.title"))
        .story(
            words.say(
                "working.story",
                "pest",
                pest,
                "dose",
                words.exact(dose) + " " + ProbitExercises.UNIT.symbol(),
                "animals",
                animals,
                "dead",
                dead,
                "intercept",
                words.exact(intercept),
                "slope",
                words.exact(slope)))
        .givens(
            Givens.none()
                .withNumber("intercept", intercept)
                .withNumber("slope", slope)
                .withNumber("dose", dose)
                .withNumber("animals", animals)
                .withNumber("dead", dead))
        .part(words.say("working.question.expected"), earlier -> expected(line, dose, words))
        .part(
            words.say("working.question.weight"),
            earlier -> weight(earlier.number(0), animals, dead, words))
        .part(
            words.say("working.question.probit"),
            2,
            earlier -> working(earlier.number(0), share, words))
        .aid(ExamAid.WORKING_PROBIT_TABLE)
        .source(HandProbit.textbook())
        .build();
  }

  private static SolvedPart expected(ProbitLine line, double dose, CourseWords words) {
    double log = ProbitLine.logDose(dose);
    double probit = line.at(log);
    return new SolvedPart(
        probit(probit),
        Working.of(words.say("working.title"))
            .step(
                words.say("working.step.expected"),
                "Y = a + b · log D",
                words.exact(line.intercept())
                    + " + "
                    + words.exact(line.slope())
                    + " · "
                    + words.number(log, 4),
                words.number(probit, 2)),
        List.of(
            new TypicalSlip(ProbitMistake.DOSE_NOT_LOGGED, probit(line.at(dose))),
            new TypicalSlip(ProbitMistake.NATURAL_LOG, probit(line.at(Math.log(dose))))));
  }

  private static SolvedPart weight(
      double expected, double animals, double dead, CourseWords words) {
    double coefficient = WorkingProbit.at(expected).weight();
    return new SolvedPart(
        weightAnswer(animals * coefficient),
        Working.of(words.say("working.title"))
            .step(
                words.say("working.step.coefficient"),
                "w = Z² / (P Q)",
                "Y = " + words.number(expected, 2),
                words.number(coefficient, 4))
            .step(
                words.say("working.step.weight"),
                "n w",
                words.exact(animals) + " · " + words.number(coefficient, 4),
                words.number(animals * coefficient, 1)),
        List.of(
            new TypicalSlip(ProbitMistake.WEIGHT_WITHOUT_NUMBER, weightAnswer(coefficient)),
            new TypicalSlip(ProbitMistake.DEAD_FOR_TESTED, weightAnswer(dead * coefficient))));
  }

  private static NumberAnswer weightAnswer(double weight) {
    return new NumberAnswer(weight, 1, AnswerTolerance.table(0.01 * weight + 0.05), List.of());
  }

  private static SolvedPart working(double expected, double share, CourseWords words) {
    var row = WorkingProbit.at(expected);
    double working = row.least() + share * row.range();
    return new SolvedPart(
        probit(working),
        Working.of(words.say("working.title"))
            .step(
                words.say("working.step.least"),
                "Y − P / Z; 1 / Z",
                "Y = " + words.number(expected, 2),
                words.number(row.least(), 3) + "; " + words.number(row.range(), 3))
            .step(
                words.say("working.step.working"),
                words.say("formula.working"),
                words.number(row.least(), 3)
                    + " + "
                    + words.number(share, 3)
                    + " · "
                    + words.number(row.range(), 3),
                words.number(working, 2)),
        List.of(
            new TypicalSlip(ProbitMistake.LEAST_GIVEN, probit(row.least())),
            new TypicalSlip(
                ProbitMistake.PROBIT_OF_SURVIVORS, probit(row.least() + (1 - share) * row.range())),
            new TypicalSlip(ProbitMistake.FORGOT_FIVE, probit(working - ProbitLine.HALF))));
  }

  private static NumberAnswer probit(double probit) {
    return new NumberAnswer(probit, 2, AnswerTolerance.table(0.02), List.of());
  }
}
