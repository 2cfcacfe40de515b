package agro.development.rate;

/**
 * What a reader of a fit has to know before using it.
 *
 * @param kind what the remark is about
 * @param text the remark as a sentence without a full stop
 */
public record RateRemark(Kind kind, String text) {

  /** What a remark is about. */
  public enum Kind {
    /** So many parameters that nothing is left to judge the fit by. */
    SATURATED,
    /** The search did not end at an optimum. */
    NOT_CONVERGED,
    /** Parameters can be changed together without changing the curve. */
    RIDGE,
    /** A parameter ended on the edge of its range. */
    BOUNDARY,
    /** Rounded parameters give another curve. */
    DIGITS,
    /** Some of the data were left out. */
    LEFT_OUT,
    /** A straight line where the rates bend. */
    BEND,
    /** The curve misses the means by more than the animals scatter, or the other way round. */
    LACK_OF_FIT,
    /** What the intervals do not know of. */
    REPLICATION
  }

  /**
   * Whether parameters of the fit should not be compared with others.
   *
   * @return true for ridges and edges
   */
  public boolean isAboutIdentification() {
    return kind == Kind.RIDGE || kind == Kind.BOUNDARY;
  }
}
