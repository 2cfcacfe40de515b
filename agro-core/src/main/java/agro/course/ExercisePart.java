package agro.course;

import java.util.Objects;

/**
 * One question of an exercise.
 *
 * @param question the question, which says in which unit or to how many decimals it is to be
 *     answered where that matters
 * @param weight its share of the marks relative to the other parts, above zero
 * @param solution how it is solved
 */
public record ExercisePart(String question, double weight, PartSolution solution) {
  /** Refuses an empty question and a weight that counts for nothing. */
  public ExercisePart {
    Objects.requireNonNull(solution, "solution");
    if (question.isBlank() || !(weight > 0)) {
      throw new IllegalArgumentException("a part needs a question and a weight above zero");
    }
  }
}
