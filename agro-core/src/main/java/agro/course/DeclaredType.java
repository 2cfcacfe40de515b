package agro.course;

import java.util.Objects;
import java.util.Set;

/**
 * A type of exercise put together from what it states and the method that sets it.
 *
 * @param code a name that never changes, beginning with its topic
 * @param topic what it is about
 * @param difficulties how much it can ask for, at least one
 * @param mistakes the mistakes whose answers it knows
 * @param setter what draws the numbers and asks the questions
 */
public record DeclaredType(
    String code,
    CourseTopic topic,
    Set<Difficulty> difficulties,
    Set<Mistake> mistakes,
    Setter setter)
    implements ExerciseType {

  /** Draws numbers and asks questions, as {@link ExerciseType#set} describes it. */
  @FunctionalInterface
  public interface Setter {
    /**
     * Sets an exercise.
     *
     * @param draw source of its numbers
     * @param difficulty how much it asks for
     * @param context place, units, language, exam or not
     * @return story, givens and questions
     */
    ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context);
  }

  /** Copies the sets and refuses a type that cannot be set. */
  public DeclaredType {
    Objects.requireNonNull(topic, "topic");
    Objects.requireNonNull(setter, "setter");
    difficulties = Set.copyOf(difficulties);
    mistakes = Set.copyOf(mistakes);
    if (!code.startsWith(topic.code() + "-") || difficulties.isEmpty()) {
      throw new IllegalArgumentException(
          "a type needs a code that begins with its topic, and a difficulty, but got "
              + code
              + " with "
              + difficulties);
    }
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    return setter.set(draw, difficulty, context);
  }
}
