package agro.weather.gap;

import agro.weather.DayOrigin;

/** What was done about a gap. */
public enum GapMethod {
  /** A straight line between the days before and after. */
  STRAIGHT_LINE("on a straight line between the days before and after", DayOrigin.INTERPOLATED),
  /** A neighbouring station, by regression of each month. */
  NEIGHBOUR("from a neighbouring station", DayOrigin.NEIGHBOUR),
  /** What is usual on those days, drawn to the known days beside the gap. */
  CLIMATOLOGY("from the climate normals", DayOrigin.CLIMATE_NORMAL),
  /** Nothing. */
  LEFT_OPEN("left open", DayOrigin.MISSING);

  private final String words;
  private final DayOrigin origin;

  GapMethod(String words, DayOrigin origin) {
    this.words = words;
    this.origin = origin;
  }

  /**
   * The method in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }

  /**
   * The origin of the days that it fills.
   *
   * @return the mark of a filled day
   */
  public DayOrigin origin() {
    return origin;
  }
}
