package agro.programme.window;

/** What a limit says of an hour. */
public enum HourAnswer {
  /** The hour meets the limit. */
  MEETS,
  /** The hour does not meet the limit. */
  REFUSES,
  /** A value of that hour, or of one that counts for it, is missing. */
  UNKNOWN
}
