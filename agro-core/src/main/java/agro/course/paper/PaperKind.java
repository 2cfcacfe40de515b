package agro.course.paper;

/** Where a paper is solved. */
public enum PaperKind {
  /** At home, with a computer if need be. */
  HOMEWORK,
  /** In a room, with a pocket calculator and the tables that come with the paper. */
  EXAM
}
