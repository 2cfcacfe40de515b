package agro.weather.log;

import java.time.LocalTime;
import java.util.Objects;

/**
 * At which time of the day the extremes of the 24 hours before were read off a thermometer. The
 * highest temperature of a morning reading is that of the afternoon before, so it belongs to the
 * day before the date of the reading.
 *
 * @param time time of the day of the observation
 * @param maximum the day to which the highest temperature is given
 */
public record ExtremesReadAt(LocalTime time, MaximumDay maximum) {

  /** The day to which the highest temperature of a reading is given. */
  public enum MaximumDay {
    /** The date beside it, as written. */
    AS_WRITTEN,
    /** The day before the date beside it. */
    DAY_BEFORE
  }

  /** Refuses nulls. */
  public ExtremesReadAt {
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(maximum, "maximum");
  }
}
