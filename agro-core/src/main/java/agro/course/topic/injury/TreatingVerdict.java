package agro.course.topic.injury;

import agro.course.ChoiceAnswer;
import agro.course.ChoiceAnswer.AnswerChoice;
import agro.course.CourseWords;
import java.util.List;

/** Treat or do not treat. */
final class TreatingVerdict {

  static final String TREAT = "treat";
  static final String LEAVE = "leave";

  private TreatingVerdict() {}

  static ChoiceAnswer of(boolean treat, CourseWords words) {
    return new ChoiceAnswer(
        List.of(
            new AnswerChoice(TREAT, words.say("verdict.treat")),
            new AnswerChoice(LEAVE, words.say("verdict.leave"))),
        treat ? TREAT : LEAVE);
  }

  static ChoiceAnswer opposite(ChoiceAnswer answer) {
    return answer.withCode(answer.code().equals(TREAT) ? LEAVE : TREAT);
  }
}
