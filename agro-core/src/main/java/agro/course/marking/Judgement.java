package agro.course.marking;

import agro.course.AnswerValue;
import agro.course.Mistake;
import agro.course.marking.ReadAnswer.ReadValue;
import java.util.List;
import java.util.Optional;

/**
 * What is thought of one answer, before it becomes marks and words.
 *
 * @param verdict what became of it
 * @param read the reading that was judged, if it was a value
 * @param from the solution that it was compared with
 * @param mistake the mistake, if it is known
 * @param own what later parts may have been worked on with
 */
record Judgement(
    MarkVerdict verdict,
    Optional<ReadValue> read,
    EarlierWay.Solved from,
    Optional<Mistake> mistake,
    List<AnswerValue> own) {

  Judgement {
    own = List.copyOf(own);
  }

  /** Whether the value is right on right answers before it. */
  boolean isCleanRight() {
    return from.way().isClean()
        && mistake.isEmpty()
        && (verdict == MarkVerdict.RIGHT || verdict == MarkVerdict.UNIT_MISSING)
        && read.isPresent()
        && AnswerNumbers.accepts(from.part().answer(), read.get());
  }
}
