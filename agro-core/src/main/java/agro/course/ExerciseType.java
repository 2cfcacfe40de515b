package agro.course;

import java.util.Set;

/**
 * A kind of exercise with numbers of its own for every seed. A type is part of a version of the
 * generator: whatever it draws or prints must stay as it is for as long as that version is kept.
 */
public interface ExerciseType {

  /**
   * A name that never changes, beginning with its topic.
   *
   * @return lower case with hyphens, for example {@code "dose-field"}
   */
  String code();

  /**
   * What it is about.
   *
   * @return the topic
   */
  CourseTopic topic();

  /**
   * How much it can ask for.
   *
   * @return at least one difficulty
   */
  Set<Difficulty> difficulties();

  /**
   * The mistakes whose answers it knows.
   *
   * @return all mistakes that may stand among its typical slips
   */
  Set<Mistake> mistakes();

  /**
   * Sets an exercise. Numbers are drawn before any word is said, so that a seed gives the same
   * numbers in every language.
   *
   * @param draw source of its numbers
   * @param difficulty one of {@link #difficulties()}
   * @param context place, units, language, exam or not
   * @return story, givens and questions
   */
  ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context);
}
