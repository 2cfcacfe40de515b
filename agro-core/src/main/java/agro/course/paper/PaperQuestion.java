package agro.course.paper;

import agro.course.Exercise;
import agro.course.SolvedPart;
import agro.course.marking.AnswerOptions;
import agro.course.marking.MarkShares;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One question of a student's paper.
 *
 * @param number number on the paper, from 1
 * @param exercise the exercise with the student's own numbers
 * @param solution its solution, one for each part
 * @param marks marks of the whole question
 * @param form how it is answered
 */
public record PaperQuestion(
    int number, Exercise exercise, List<SolvedPart> solution, double marks, QuestionForm form) {

  /** Copies the list and refuses a solution that does not fit. */
  public PaperQuestion {
    Objects.requireNonNull(form, "form");
    solution = List.copyOf(solution);
    if (solution.size() != exercise.parts().size()) {
      throw new IllegalArgumentException("a solution has one entry for each part");
    }
  }

  /**
   * The label of a part, as files of answers head their columns.
   *
   * @param part part, from zero
   * @return for example {@code "2a"}
   */
  public String label(int part) {
    return number + Exercise.letter(part);
  }

  /**
   * The labels of all parts.
   *
   * @return for example {@code "2a"} and {@code "2b"}
   */
  public List<String> labels() {
    return IntStream.range(0, solution.size()).mapToObj(this::label).toList();
  }

  /**
   * The marks of a part: its share by weight, in halves where that works out.
   *
   * @param part part, from zero
   * @return the marks
   */
  public double marks(int part) {
    return MarkShares.share(exercise.parts(), marks).get(part);
  }

  /**
   * What a student chooses from.
   *
   * @param part part, from zero
   * @return the options; empty where the answer is to be written
   */
  public Optional<AnswerOptions> options(int part) {
    return form == QuestionForm.OPTIONS
        ? Optional.of(AnswerOptions.of(exercise, part, exercise.key().seed()))
        : Optional.empty();
  }
}
