package agro.weather.sun;

/** Where the sun has to stand for the day to begin and to end. */
public enum SunHeight {
  /**
   * The upper edge of the sun is seen on the horizon, raised by the air: its centre is 50 minutes
   * of arc below. This is the sunrise of almanacs.
   */
  UPPER_EDGE_SEEN("the upper edge of the sun is seen on the horizon", 0.8333),
  /** The centre of the sun is on the horizon of a world without air. */
  CENTRE("the centre of the sun is on the horizon", 0),
  /** Civil twilight: the centre is 6° below the horizon. */
  CIVIL_TWILIGHT("civil twilight", 6),
  /** Nautical twilight: the centre is 12° below the horizon. */
  NAUTICAL_TWILIGHT("nautical twilight", 12),
  /** Astronomical twilight: the centre is 18° below the horizon. */
  ASTRONOMICAL_TWILIGHT("astronomical twilight", 18);

  private final String words;
  private final double degreesBelowHorizon;

  SunHeight(String words, double degreesBelowHorizon) {
    this.words = words;
    this.degreesBelowHorizon = degreesBelowHorizon;
  }

  /**
   * The height in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }

  /**
   * How far the centre of the sun is below the horizon.
   *
   * @return degrees, 0 or more
   */
  public double degreesBelowHorizon() {
    return degreesBelowHorizon;
  }
}
