package agro.course;

import java.util.Locale;

/**
 * A mistake that people make, with a name. Each topic lists its own in an enum whose texts lie in
 * the bundle of the topic under {@code mistake.NAME} (what was done, as told to the student) and
 * {@code mistake.NAME.short} (the same in a few words, for tables and figures).
 */
public interface Mistake {

  /**
   * The constant's name.
   *
   * @return for example {@code "ACRE_FOR_HECTARE"}
   */
  String name();

  /**
   * Name of the bundle in the package of the enum.
   *
   * @return for example {@code "dose"}
   */
  String bundle();

  /**
   * The mistake as files write it.
   *
   * @return lower case with hyphens
   */
  default String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * What is told to the student.
   *
   * @param words language
   * @return one or two sentences: what was done, and what to do
   */
  default String feedback(CourseWords words) {
    return words.in(getClass(), bundle()).say("mistake." + name());
  }

  /**
   * The mistake in a few words.
   *
   * @param words language
   * @return a phrase without a full stop
   */
  default String phrase(CourseWords words) {
    return words.in(getClass(), bundle()).say("mistake." + name() + ".short");
  }
}
