package agro.course.marking;

import agro.course.AnswerValue;
import java.util.List;
import java.util.Optional;

/** What a typed text was read as. */
sealed interface ReadAnswer {

  /** Nothing was typed. */
  record Blank() implements ReadAnswer {}

  /**
   * One value, or several of which one may be right.
   *
   * @param values at least one, the likeliest first
   * @param otherwise what to say if none of them is right or a known mistake; nothing if the first
   *     is simply wrong
   */
  record Values(List<ReadValue> values, Optional<ReadAnswer> otherwise) implements ReadAnswer {
    public Values {
      values = List.copyOf(values);
    }

    static Values of(ReadValue value) {
      return new Values(List.of(value), Optional.empty());
    }
  }

  /**
   * Something of another kind.
   *
   * @param print what was read
   * @param number the number in it
   * @param reason why it is no answer
   */
  record WrongKind(String print, double number, String reason) implements ReadAnswer {}

  /**
   * It cannot be told what was meant.
   *
   * @param question what to ask
   */
  record Unclear(String question) implements ReadAnswer {}

  /**
   * One reading.
   *
   * @param value the value; nothing if no such amount exists, for example a volume below zero
   * @param number the number in the unit of the answer; NaN if it is no number
   * @param halfDigit half a unit of the last digit that was written, in the same unit
   * @param typedNumber the number as it was typed; NaN if it is no number
   * @param print the reading in print
   * @param unitMissing whether no unit was typed
   * @param onlyIfRight whether nobody would read it so unless it is right
   * @param remark how it was read, if that is worth a sentence, or empty
   */
  record ReadValue(
      Optional<AnswerValue> value,
      double number,
      double halfDigit,
      double typedNumber,
      String print,
      boolean unitMissing,
      boolean onlyIfRight,
      String remark) {

    static ReadValue of(AnswerValue value, String print) {
      return new ReadValue(Optional.of(value), Double.NaN, 0, Double.NaN, print, false, false, "");
    }

    ReadValue withRemark(String sentence) {
      return new ReadValue(
          value, number, halfDigit, typedNumber, print, unitMissing, onlyIfRight, sentence);
    }

    ReadValue onlyIfRight(String sentence) {
      return new ReadValue(
          value, number, halfDigit, typedNumber, print, unitMissing, true, sentence);
    }

    ReadValue withoutUnit() {
      return new ReadValue(value, number, halfDigit, typedNumber, print, true, onlyIfRight, remark);
    }
  }
}
