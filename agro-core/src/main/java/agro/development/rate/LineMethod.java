package agro.development.rate;

import agro.source.Reference;

/** How a straight line is laid through a rearing. */
public enum LineMethod {
  /** Ordinary least squares of the rate on temperature. */
  LEAST_SQUARES("least squares of rates on temperatures", RateSources.CAMPBELL_1974),
  /** The reduced major axis of duration times temperature on duration, after Ikemoto and Takai. */
  REDUCED_MAJOR_AXIS(
      "reduced major axis of D T on D (Ikemoto and Takai)", RateSources.IKEMOTO_TAKAI_2000);

  private final String words;
  private final Reference source;

  LineMethod(String words, Reference source) {
    this.words = words;
    this.source = source;
  }

  /**
   * The method in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }

  /**
   * Where the method comes from.
   *
   * @return the work
   */
  public Reference source() {
    return source;
  }
}
