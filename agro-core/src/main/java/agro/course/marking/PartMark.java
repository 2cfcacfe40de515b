package agro.course.marking;

import agro.course.Mistake;
import java.util.Objects;
import java.util.Optional;

/**
 * The mark for one part of an exercise.
 *
 * @param part letter of the part
 * @param typed what was typed, as it stood there
 * @param reading what it was read as; empty if it could not be read
 * @param marks marks given
 * @param of marks that the part is worth
 * @param verdict what became of the answer
 * @param carriedForward whether it was marked from the student's own earlier answers
 * @param mistake the mistake, if it is known
 * @param feedback what is told to the student, one or more sentences
 */
public record PartMark(
    String part,
    String typed,
    String reading,
    double marks,
    double of,
    MarkVerdict verdict,
    boolean carriedForward,
    Optional<Mistake> mistake,
    String feedback) {

  /** Refuses what is missing, and marks outside what the part is worth. */
  public PartMark {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(typed, "typed");
    Objects.requireNonNull(reading, "reading");
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(mistake, "mistake");
    Objects.requireNonNull(feedback, "feedback");
    if (!(marks >= 0 && marks <= of)) {
      throw new IllegalArgumentException("marks lie between 0 and " + of + ", but got " + marks);
    }
  }

  /**
   * Whether all marks were given.
   *
   * @return whether nothing is missing
   */
  public boolean isFull() {
    return marks == of;
  }
}
