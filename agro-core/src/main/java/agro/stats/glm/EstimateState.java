package agro.stats.glm;

/** Whether the data give an estimate a finite value. */
public enum EstimateState {
  /** A finite estimate. */
  FINITE("estimated"),

  /** The likelihood rises without end as the estimate grows. */
  PLUS_INFINITY("no finite estimate: runs to plus infinity"),

  /** The likelihood rises without end as the estimate falls. */
  MINUS_INFINITY("no finite estimate: runs to minus infinity"),

  /** A difference of two things without finite estimates, of which the data say nothing. */
  UNDETERMINED("not determined by the data"),

  /** The likelihood is greatest where a mean is at the edge of its range. */
  AT_EDGE("no standard error: a fitted mean lies at the edge of its range"),

  /** The design has no observations that tell it from other coefficients. */
  NOT_ESTIMABLE("not estimable from this design");

  private final String words;

  EstimateState(String words) {
    this.words = words;
  }

  /**
   * What is printed in place of a number.
   *
   * @return what is printed in place of a number
   */
  public String words() {
    return words;
  }
}
