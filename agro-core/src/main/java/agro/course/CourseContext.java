package agro.course;

import agro.working.TextLanguage;
import java.util.Objects;

/**
 * For whom an exercise is set.
 *
 * @param setting place and units
 * @param words language
 * @param exam whether it must be solved with a pocket calculator and printed tables: no arcsine, no
 *     iteration, whatever table is needed is named
 */
public record CourseContext(CourseSetting setting, CourseWords words, boolean exam) {
  /** Refuses what is missing. */
  public CourseContext {
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(words, "words");
  }

  /**
   * A class in a place, at its desks at home.
   *
   * @param setting place and units
   * @param language language of all texts
   * @return exercises that may need a computer
   */
  public static CourseContext of(CourseSetting setting, TextLanguage language) {
    return new CourseContext(setting, CourseWords.of(language), false);
  }

  /**
   * A class in the invented vale of the demonstration data, in metric units.
   *
   * @param language language of all texts, and of the names of crops and pests
   * @return exercises that may need a computer
   */
  public static CourseContext osmereVale(TextLanguage language) {
    return of(CourseSetting.osmereVale(language), language);
  }

  /**
   * The same class with pocket calculator and printed tables.
   *
   * @return exercises that need no arcsine and no iteration, and name the tables they need
   */
  public CourseContext asExam() {
    return new CourseContext(setting, words, true);
  }

  /**
   * The same class in other units.
   *
   * @param units units in which it works
   * @return the changed context
   */
  public CourseContext withUnits(CourseUnits units) {
    return new CourseContext(setting.withUnits(units), words, exam);
  }

  /**
   * The units in which the class works.
   *
   * @return the units of the setting
   */
  public CourseUnits units() {
    return setting.units();
  }
}
