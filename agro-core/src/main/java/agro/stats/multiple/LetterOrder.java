package agro.stats.multiple;

/** Which mean gets the letter a. */
public enum LetterOrder {
  /** The largest mean has the letter a. */
  LARGEST_FIRST,
  /** The smallest mean has the letter a. */
  SMALLEST_FIRST
}
