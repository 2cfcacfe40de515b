package agro.course.marking;

import agro.course.AnswerTolerance;
import agro.course.CourseWords;
import agro.course.Exercise;
import agro.course.ExpectedAnswer;
import agro.course.marking.ReadAnswer.ReadValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is told to the student about an answer. */
final class MarkFeedback {

  private final CourseWords words;

  MarkFeedback(CourseWords words) {
    this.words = words;
  }

  /** The sentences for a judgement; the reading says why where nothing could be judged. */
  String of(Judgement judgement, ReadAnswer read) {
    var sentences = new ArrayList<String>();
    switch (judgement.verdict()) {
      case RIGHT -> right(judgement, sentences);
      case ROUNDED_TOO_FAR -> {
        mistake(judgement, sentences);
        tolerance(judgement.from().part().answer(), sentences);
      }
      case UNIT_MISSING -> unitMissing(judgement, sentences);
      case MISTAKE -> {
        mistake(judgement, sentences);
        carried(judgement, sentences, "feedback.mistake.carried");
      }
      case WRONG -> sentences.add(words.say("feedback.wrong"));
      case NOT_ANSWERED -> sentences.add(words.say("feedback.blank"));
      case WRONG_KIND, UNCLEAR -> {
        sentences.add(reason(read));
        mistake(judgement, sentences);
      }
      default -> throw new IllegalStateException("no words for " + judgement.verdict());
    }
    judgement.read().map(ReadValue::remark).filter(one -> !one.isEmpty()).ifPresent(sentences::add);
    return String.join(" ", sentences);
  }

  private static String reason(ReadAnswer read) {
    if (read instanceof ReadAnswer.Values values) {
      return reason(values.otherwise().orElseThrow());
    }
    return read instanceof ReadAnswer.WrongKind other
        ? other.reason()
        : ((ReadAnswer.Unclear) read).question();
  }

  private void right(Judgement judgement, List<String> sentences) {
    if (judgement.from().way().isClean()) {
      sentences.add(words.say("feedback.right"));
    }
    carried(judgement, sentences, "feedback.carried");
    tolerance(judgement.from().part().answer(), sentences);
  }

  private void carried(Judgement judgement, List<String> sentences, String key) {
    var own = judgement.from().way().ownParts();
    if (!own.isEmpty()) {
      sentences.add(
          words.say(
              key, "parts", own.stream().map(Exercise::letter).collect(Collectors.joining(", "))));
    }
  }

  private void mistake(Judgement judgement, List<String> sentences) {
    judgement.mistake().ifPresent(mistake -> sentences.add(mistake.feedback(words)));
  }

  private void unitMissing(Judgement judgement, List<String> sentences) {
    var number = judgement.read().map(ReadValue::print).orElse("");
    boolean rounded = judgement.mistake().equals(Optional.of(GeneralMistake.ROUNDED_TOO_FAR));
    var wrong = rounded ? "feedback.unit.what" : "feedback.unit";
    sentences.add(words.say(isRight(judgement) ? "feedback.unit.right" : wrong, "number", number));
    mistake(judgement, sentences);
    carried(judgement, sentences, "feedback.mistake.carried");
  }

  static boolean isRight(Judgement judgement) {
    return judgement
        .read()
        .filter(value -> AnswerNumbers.accepts(judgement.from().part().answer(), value))
        .isPresent();
  }

  private void tolerance(ExpectedAnswer answer, List<String> sentences) {
    var tolerance = AnswerNumbers.tolerance(answer);
    if (tolerance.isEmpty() || tolerance.get().reason() == AnswerTolerance.Reason.EXACT) {
      return;
    }
    double right = AnswerNumbers.number(answer).orElseThrow();
    double half = tolerance.get().amount();
    sentences.add(
        words.say(
            "tolerance." + tolerance.get().reason(),
            "low",
            words.number(right - half),
            "high",
            (words.number(right + half) + " " + AnswerNumbers.symbol(answer)).strip()));
  }
}
