package agro.course.topic.sampling;

import agro.course.ChoiceAnswer;
import agro.course.ChoiceAnswer.AnswerChoice;
import agro.course.CourseWords;
import agro.course.ExerciseDraw;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import java.util.List;

/**
 * What two stop lines say of a total.
 *
 * @param low line at and below which the field is left
 * @param high line at and above which it is treated
 * @param middle total midway between the chances, slope times units
 */
record StopLineVerdict(double low, double high, double middle) {

  private static final String LEAVE = "leave";
  private static final String GO_ON = "look-on";
  private static final String TREAT = "treat";

  /** A total is at least so far from a line that a rounded line says the same. */
  private static final double CLEAR = 0.35;

  /** A total at which leaving, looking on and treating are about as frequent. */
  int total(ExerciseDraw draw) {
    int outcome = draw.whole(0, 2);
    for (int attempt = 0; attempt < 1_000; attempt++) {
      int total =
          draw.whole(
              (int) Math.max(0, Math.floor(low - (high - low))),
              (int) Math.ceil(high + (high - low)));
      boolean clear =
          Math.abs(total - low) > CLEAR
              && Math.abs(total - high) > CLEAR
              && Math.abs(total - middle) > CLEAR;
      int here = total <= low ? 0 : total >= high ? 2 : 1;
      if (clear && (here == outcome || attempt > 500)) {
        return total;
      }
    }
    return (int) Math.ceil(high + 1);
  }

  /** The verdict with its slips. */
  SolvedPart solve(int total, CourseWords words) {
    var choices =
        List.of(
            new AnswerChoice(TREAT, words.say("stop.treat")),
            new AnswerChoice(LEAVE, words.say("stop.leave")),
            new AnswerChoice(GO_ON, words.say("stop.look.on")));
    var code = total <= low ? LEAVE : total >= high ? TREAT : GO_ON;
    var right = new ChoiceAnswer(choices, code);
    var draft =
        SolutionDraft.titled(words, words.say("stop.verdict.step"))
            .step(
                "stop.verdict",
                words.say("stop.between", "low", words.number(low), "high", words.number(high)),
                words.say(
                    "stop.result", "total", total, "verdict", words.say("stop." + key(code))));
    if (code.equals(GO_ON)) {
      draft.slip(SamplingMistake.MIDDLE_DECIDES, right.withCode(total > middle ? TREAT : LEAVE));
    } else {
      draft
          .slip(SamplingMistake.LINES_EXCHANGED, right.withCode(code.equals(TREAT) ? LEAVE : TREAT))
          .slip(SamplingMistake.LINE_NOT_NOTICED, right.withCode(GO_ON));
    }
    return draft.answer(right);
  }

  private static String key(String code) {
    return code.equals(GO_ON) ? "look.on" : code;
  }
}
