package agro.trial.series;

/** Which scatter the means of one date are judged by. */
public enum DateErrors {
  /** The scatter of plots on that date alone: right also where it grows with the population. */
  OWN("each date has the error of its own plots"),
  /** The scatter of all dates by the model: sharper where dates scatter alike. */
  POOLED("one error from all dates by the model");

  private final String words;

  DateErrors(String words) {
    this.words = words;
  }

  /**
   * The rule in words.
   *
   * @return a clause
   */
  public String words() {
    return words;
  }
}
