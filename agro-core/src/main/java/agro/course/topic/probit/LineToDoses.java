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
import agro.course.PercentAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.course.handwork.HandProbit;
import agro.course.sheet.ProbitLine;
import agro.units.MassPerVolume;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** From the line of probits on log dose to lethal doses, and back to a mortality. */
final class LineToDoses implements ExerciseType {

  @Override
  public String code() {
    return "probit-line";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.PROBIT;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        ProbitMistake.ANTILOG_FORGOTTEN,
        ProbitMistake.NATURAL_ANTILOG,
        ProbitMistake.FORGOT_FIVE,
        ProbitMistake.WRONG_TAIL,
        ProbitMistake.NOT_DIVIDED_BY_SLOPE,
        ProbitMistake.SURVIVORS_GIVEN,
        ProbitMistake.DOSE_NOT_LOGGED,
        ProbitMistake.NATURAL_LOG);
  }

  private static final double NINETY = 90;

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    double slope = draw.step(1.4, 4, 0.05);
    double half = draw.sensible(1.2, 25, 2);
    double intercept = Math.round(100 * (ProbitLine.HALF - slope * StrictMath.log10(half))) / 100.0;
    double dose = draw.sensible(0.5 * half, 2 * half, 2);
    var pest = draw.oneOf(context.setting().pests());
    var words = ProbitExercises.words(context.words());
    var line = new ProbitLine(intercept, slope);
    var printedDose = words.exact(dose) + " " + ProbitExercises.UNIT.symbol();
    return ExerciseBody.titled(words.say("line.title"))
        .story(
            words.say(
                "line.story",
                "pest",
                pest,
                "intercept",
                words.exact(intercept),
                "slope",
                words.exact(slope)))
        .givens(
            Givens.none()
                .withNumber("intercept", intercept)
                .withNumber("slope", slope)
                .withNumber("dose", dose))
        .part(words.say("line.question.half"), earlier -> half(line, words))
        .part(
            words.say("line.question.ninety"),
            earlier -> ninety(line.slope(), earlier.quantity(0, MassPerVolume.class), words))
        .part(
            words.say("line.question.percent", "dose", printedDose),
            earlier -> percent(line, dose, words))
        .aid(ExamAid.PROBIT_TABLE)
        .source(HandProbit.textbook())
        .build();
  }

  private static SolvedPart half(ProbitLine line, CourseWords words) {
    double log = line.logDoseFor(50);
    double dose = Math.pow(10, log);
    var slips = new ArrayList<TypicalSlip>();
    if (log > 0) {
      slips.add(new TypicalSlip(ProbitMistake.ANTILOG_FORGOTTEN, ProbitExercises.dose(log)));
    }
    slips.add(new TypicalSlip(ProbitMistake.NATURAL_ANTILOG, ProbitExercises.dose(Math.exp(log))));
    slips.add(
        new TypicalSlip(
            ProbitMistake.FORGOT_FIVE,
            ProbitExercises.dose(Math.pow(10, -line.intercept() / line.slope()))));
    return new SolvedPart(
        ProbitExercises.dose(dose),
        Working.of(words.say("line.title"))
            .step(
                words.say("line.step.log"),
                "log LD50 = (5 − a) / b",
                "(5 − " + words.exact(line.intercept()) + ") / " + words.exact(line.slope()),
                words.number(log, 4))
            .step(
                words.say("line.step.antilog"),
                "LD50 = 10^log LD50",
                "10^" + words.number(log, 4),
                words.number(dose) + " " + ProbitExercises.UNIT.symbol()),
        slips);
  }

  /** The dose that kills 90 %, from the one that kills half. */
  static SolvedPart ninety(double slope, MassPerVolume half, CourseWords words) {
    double deviate = ProbitLine.probit(NINETY) - ProbitLine.HALF;
    double from = half.in(ProbitExercises.UNIT);
    double dose = from * Math.pow(10, deviate / slope);
    return new SolvedPart(
        ProbitExercises.dose(dose),
        Working.of(words.say("line.title"))
            .step(
                words.say("line.step.deviate", "table", words.number(deviate + ProbitLine.HALF, 2)),
                words.say("formula.deviate"),
                words.number(deviate + ProbitLine.HALF, 4) + " − 5",
                words.number(deviate, 4))
            .step(
                words.say("line.step.ninety"),
                "LD90 = LD50 · 10^(z / b)",
                words.number(from)
                    + " · 10^("
                    + words.number(deviate, 4)
                    + " / "
                    + words.number(slope)
                    + ")",
                words.number(dose) + " " + ProbitExercises.UNIT.symbol()),
        List.of(
            new TypicalSlip(
                ProbitMistake.WRONG_TAIL,
                ProbitExercises.dose(from * Math.pow(10, -deviate / slope))),
            new TypicalSlip(
                ProbitMistake.NOT_DIVIDED_BY_SLOPE,
                ProbitExercises.dose(from * Math.pow(10, deviate))),
            new TypicalSlip(
                ProbitMistake.NATURAL_ANTILOG,
                ProbitExercises.dose(from * Math.exp(deviate / slope)))));
  }

  private static SolvedPart percent(ProbitLine line, double dose, CourseWords words) {
    double log = ProbitLine.logDose(dose);
    double percent = ProbitLine.percent(line.at(log));
    return new SolvedPart(
        answer(percent),
        Working.of(words.say("line.title"))
            .step(
                words.say("line.step.probit"),
                "Y = a + b · log D",
                words.exact(line.intercept())
                    + " + "
                    + words.exact(line.slope())
                    + " · "
                    + words.number(log, 4),
                words.number(line.at(log), 2))
            .step(words.say("line.step.percent"), "", "", words.number(percent, 1) + " %"),
        List.of(
            new TypicalSlip(ProbitMistake.SURVIVORS_GIVEN, answer(100 - percent)),
            new TypicalSlip(
                ProbitMistake.NATURAL_LOG, answer(ProbitLine.percent(line.at(Math.log(dose))))),
            new TypicalSlip(
                ProbitMistake.DOSE_NOT_LOGGED, answer(ProbitLine.percent(line.at(dose))))));
  }

  /** A hundredth of a probit is up to 0.4 % of the animals. */
  private static PercentAnswer answer(double percent) {
    return new PercentAnswer(percent, 1, AnswerTolerance.table(0.5));
  }
}
