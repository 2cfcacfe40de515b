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
import agro.units.MassPerVolume;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A line through two doses: the slope, then the dose that kills half. */
final class LineThroughTwo implements ExerciseType {

  @Override
  public String code() {
    return "probit-two-doses";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.PROBIT;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.ROUTINE, Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        ProbitMistake.PERCENT_FOR_PROBIT,
        ProbitMistake.SLOPE_UPSIDE_DOWN,
        ProbitMistake.NATURAL_LOG,
        ProbitMistake.DOSE_NOT_LOGGED,
        ProbitMistake.ANTILOG_FORGOTTEN,
        ProbitMistake.NATURAL_ANTILOG,
        ProbitMistake.WRONG_TAIL,
        ProbitMistake.NOT_DIVIDED_BY_SLOPE);
  }

  private static final double SLOPE_SHARE = 0.015;
  private static final double FLATTEST = 1.2;
  private static final double STEEPEST = 5;

  /** A slip that leads out of all measurable doses is none that anybody hands in. */
  private static final double ABSURD = 1_000;

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    boolean beyond = difficulty == Difficulty.DEMANDING;
    var two = two(draw, beyond);
    var pest = draw.oneOf(context.setting().pests());
    var words = ProbitExercises.words(context.words());
    var body =
        ExerciseBody.titled(words.say("two.title"))
            .story(
                words.say(
                    "two.story",
                    "pest",
                    pest,
                    "low",
                    words.exact(two.low()) + " " + ProbitExercises.UNIT.symbol(),
                    "lowPercent",
                    words.exact(two.lowPercent()),
                    "high",
                    words.exact(two.high()) + " " + ProbitExercises.UNIT.symbol(),
                    "highPercent",
                    words.exact(two.highPercent())))
            .givens(
                Givens.none()
                    .withNumber("low", two.low())
                    .withNumber("lowPercent", two.lowPercent())
                    .withNumber("high", two.high())
                    .withNumber("highPercent", two.highPercent()))
            .part(words.say("two.question.slope"), earlier -> slope(two, words))
            .part(words.say("two.question.half"), earlier -> half(two, earlier.number(0), words))
            .aid(ExamAid.PROBIT_TABLE)
            .source(HandProbit.textbook());
    if (beyond) {
      body.part(
          words.say("line.question.ninety"),
          earlier ->
              LineToDoses.ninety(
                  earlier.number(0), earlier.quantity(1, MassPerVolume.class), words));
    }
    return body.build();
  }

  /** Two doses on a line as steep as those of insects and mites are. */
  private static Two two(ExerciseDraw draw, boolean beyond) {
    while (true) {
      double low = draw.sensible(1, 8, 1);
      double high = low * draw.oneOf(List.of(2.0, 4.0, 5.0, 8.0, 10.0));
      double lowPercent = beyond ? draw.step(54, 65, 1) : draw.step(10, 40, 1);
      double highPercent = beyond ? draw.step(80, 96, 1) : draw.step(62, 95, 1);
      double slope = ProbitLine.through(low, lowPercent, high, highPercent).slope();
      if (slope > FLATTEST && slope < STEEPEST) {
        return new Two(low, lowPercent, high, highPercent);
      }
    }
  }

  /** Two doses and what they killed. */
  private record Two(double low, double lowPercent, double high, double highPercent) {
    double run() {
      return ProbitLine.logDose(high) - ProbitLine.logDose(low);
    }
  }

  private static SolvedPart slope(Two two, CourseWords words) {
    double slope = ProbitLine.through(two.low, two.lowPercent, two.high, two.highPercent).slope();
    double rise = slope * two.run();
    return new SolvedPart(
        answer(slope),
        Working.of(words.say("two.title"))
            .step(
                words.say("two.step.probits"),
                words.say("formula.probit"),
                words.exact(two.lowPercent) + " %; " + words.exact(two.highPercent) + " %",
                words.number(ProbitLine.probit(two.lowPercent), 4)
                    + "; "
                    + words.number(ProbitLine.probit(two.highPercent), 4))
            .step(
                words.say("two.step.logs"),
                "log D",
                "log " + words.exact(two.low) + "; log " + words.exact(two.high),
                words.number(ProbitLine.logDose(two.low), 4)
                    + "; "
                    + words.number(ProbitLine.logDose(two.high), 4))
            .step(
                words.say("two.step.slope"),
                "b = (Y2 − Y1) / (log D2 − log D1)",
                words.number(rise, 4) + " / " + words.number(two.run(), 4),
                words.number(slope, 4)),
        List.of(
            new TypicalSlip(
                ProbitMistake.PERCENT_FOR_PROBIT,
                answer((two.highPercent - two.lowPercent) / two.run())),
            new TypicalSlip(ProbitMistake.SLOPE_UPSIDE_DOWN, answer(1 / slope)),
            new TypicalSlip(ProbitMistake.NATURAL_LOG, answer(slope / Math.log(10))),
            new TypicalSlip(ProbitMistake.DOSE_NOT_LOGGED, answer(rise / (two.high - two.low)))));
  }

  private static NumberAnswer answer(double slope) {
    return new NumberAnswer(
        slope, 2, AnswerTolerance.table(SLOPE_SHARE * Math.abs(slope) + 0.005), List.of());
  }

  private static SolvedPart half(Two two, double slope, CourseWords words) {
    double from = ProbitLine.logDose(two.low);
    double gap = ProbitLine.HALF - ProbitLine.probit(two.lowPercent);
    double log = from + gap / slope;
    double dose = Math.pow(10, log);
    var slips = new ArrayList<TypicalSlip>();
    if (log > 0) {
      slips.add(new TypicalSlip(ProbitMistake.ANTILOG_FORGOTTEN, ProbitExercises.dose(log)));
    }
    slips.add(new TypicalSlip(ProbitMistake.NATURAL_ANTILOG, ProbitExercises.dose(Math.exp(log))));
    double upsideDown = Math.pow(10, from + gap * slope);
    if (upsideDown < ABSURD) {
      slips.add(new TypicalSlip(ProbitMistake.SLOPE_UPSIDE_DOWN, ProbitExercises.dose(upsideDown)));
    }
    return new SolvedPart(
        ProbitExercises.dose(dose, slope),
        Working.of(words.say("two.title"))
            .step(
                words.say("line.step.log"),
                "log LD50 = log D1 + (5 − Y1) / b",
                words.number(from, 4)
                    + (gap < 0 ? " − " : " + ")
                    + words.number(Math.abs(gap), 4)
                    + " / "
                    + words.number(slope, 4),
                words.number(log, 4))
            .step(
                words.say("line.step.antilog"),
                "LD50 = 10^log LD50",
                "10^" + words.number(log, 4),
                words.number(dose) + " " + ProbitExercises.UNIT.symbol()),
        slips);
  }
}
