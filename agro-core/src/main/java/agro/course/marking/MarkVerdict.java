package agro.course.marking;

/** What became of an answer. */
public enum MarkVerdict {
  /** Right within the tolerance, from the right answers before or from the student's own. */
  RIGHT,
  /** Right, but rounded further than the tolerance allows. */
  ROUNDED_TOO_FAR,
  /** A number without its unit, right or not. */
  UNIT_MISSING,
  /** Wrong in a way that is known. */
  MISTAKE,
  /** Wrong, and it cannot be told why. */
  WRONG,
  /** An answer of another kind than was asked for. */
  WRONG_KIND,
  /** It cannot be told what was meant; the feedback asks. */
  UNCLEAR,
  /** Left blank. */
  NOT_ANSWERED
}
