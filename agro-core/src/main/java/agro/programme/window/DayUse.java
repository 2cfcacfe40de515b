package agro.programme.window;

/** Whether the weather lets a day be used. */
public enum DayUse {
  /** The job fits into hours that meet all limits. */
  USABLE("usable"),
  /** The weather of the whole day is there, and the job does not fit. */
  NOT_USABLE("the job does not fit"),
  /** The job does not fit as far as the weather is there, but hours or values are missing. */
  PARTLY_KNOWN("weather only in part"),
  /** The weather does not reach that day, or none was given. */
  NOT_KNOWN("weather not known yet");

  private final String words;

  DayUse(String words) {
    this.words = words;
  }

  /**
   * The use in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }
}
