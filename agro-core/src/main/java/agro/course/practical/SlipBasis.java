package agro.course.practical;

/** What the size of a slip follows from. */
public enum SlipBasis {
  /** The exact sizes of units. */
  EXACT_UNITS,
  /** The example or situation that its line states. */
  STATED_CASE
}
