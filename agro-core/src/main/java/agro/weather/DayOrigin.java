package agro.weather;

import java.util.Locale;

/** Where the temperatures of one day come from. */
public enum DayOrigin {
  /** Measured at the place. */
  OBSERVED,
  /** Measured at the place, with short gaps between its readings filled in. */
  PARTLY_FILLED,
  /** Filled in on a straight line between the days before and after a short gap. */
  INTERPOLATED,
  /** Measured at a neighbouring station and shifted to the place. */
  NEIGHBOUR,
  /** What is usual on that day of the year. */
  CLIMATE_NORMAL,
  /** Worked out from another medium or another height by a formula. */
  MODELLED,
  /** Taken from a weather forecast. */
  FORECAST,
  /** Taken from the same days of a past year. */
  PAST_YEAR,
  /** Not known. */
  MISSING;

  /**
   * The origin in words.
   *
   * @return a short phrase in lower case
   */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
