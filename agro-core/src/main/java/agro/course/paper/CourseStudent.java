package agro.course.paper;

/**
 * One student of a class.
 *
 * @param id what tells the student from all others, such as a number; printed as it stands
 * @param name name, or empty
 * @param group group within the class, or empty
 */
public record CourseStudent(String id, String name, String group) {

  /** Removes white space around the texts and refuses a blank id. */
  public CourseStudent {
    id = id.strip();
    name = name.strip();
    group = group.strip();
    if (id.isEmpty()) {
      throw new IllegalArgumentException("a student needs an id");
    }
  }

  /**
   * A student who is known by an id alone.
   *
   * @param id what tells the student from all others
   * @return the student
   */
  public static CourseStudent of(String id) {
    return new CourseStudent(id, "", "");
  }

  /**
   * The student as a heading names one.
   *
   * @return id, and the name if there is one
   */
  public String heading() {
    return name.isEmpty() ? id : id + "  " + name;
  }
}
