package agro.course.paper;

import agro.course.marking.Marker;
import agro.course.marking.PartMark;
import java.util.ArrayList;
import java.util.List;

/**
 * A question with its marks.
 *
 * @param question the question
 * @param parts one for each part
 */
public record MarkedQuestion(PaperQuestion question, List<PartMark> parts) {

  /** Copies the list and refuses marks that do not fit. */
  public MarkedQuestion {
    parts = List.copyOf(parts);
    if (parts.size() != question.solution().size()) {
      throw new IllegalArgumentException("there is one mark for each part");
    }
  }

  /** Marks a question: options by their letters, all else by what was typed. */
  static MarkedQuestion of(PaperQuestion question, List<String> typed, Marker marker) {
    if (question.form() == QuestionForm.OPEN) {
      var mark = marker.mark(question.exercise(), typed, question.marks());
      return new MarkedQuestion(question, mark.parts());
    }
    var parts = new ArrayList<PartMark>();
    for (int part = 0; part < typed.size(); part++) {
      var options = question.options(part).orElseThrow();
      parts.add(options.mark(typed.get(part), question.marks(part), marker));
    }
    return new MarkedQuestion(question, parts);
  }

  /**
   * The marks of the question.
   *
   * @return the sum over its parts
   */
  public double marks() {
    return parts.stream().mapToDouble(PartMark::marks).sum();
  }
}
