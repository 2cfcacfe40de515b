package agro.course.practical;

/** Where a group's spray volume lies beside the tolerance. */
public enum GroupVerdict {
  /** Within the tolerance. */
  WITHIN,
  /** Less than the tolerance allows. */
  LOW,
  /** More than the tolerance allows. */
  HIGH
}
