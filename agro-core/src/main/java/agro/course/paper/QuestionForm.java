package agro.course.paper;

/** How a question is to be answered. */
public enum QuestionForm {
  /** The student writes the answer. */
  OPEN,
  /** The student picks one of several answers: the right one among typical wrong ones. */
  OPTIONS
}
