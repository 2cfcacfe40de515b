package agro.weather;

import java.util.Locale;

/** Where the temperatures of one day come from. */
public enum DayOrigin {
  /** Measured at the place. */
  OBSERVED,
  /** Filled in on a straight line between the days before and after a short gap. */
  INTERPOLATED,
  /** Measured at a neighbouring station and shifted to the place. */
  NEIGHBOUR,
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
