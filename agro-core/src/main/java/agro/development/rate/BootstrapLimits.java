package agro.development.rate;

/** How limits are read off the refits of a bootstrap. */
public enum BootstrapLimits {
  /** Percentiles, moved outward from the normal deviate to Student's t. */
  STUDENT_T("percentiles widened to Student's t"),
  /** By the errors of the refits over their own standard errors. */
  STUDENTISED("studentised");

  private final String words;

  BootstrapLimits(String words) {
    this.words = words;
  }

  /**
   * The limits in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
